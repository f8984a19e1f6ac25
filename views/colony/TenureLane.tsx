import { dayText } from '../../src/journal/day-words.ts';
import { damCertainty, queenTitle } from '../../src/registry/queries.ts';
import { routes } from '../app/routes.ts';
import { QUEEN_LOSSES } from '../parts/words.ts';
import type { LaneProps } from './lane.ts';
import styles from './TenureLane.module.css';
import { waitingOf } from './waiting.ts';

const BAR = 10;

/** Who headed the colony over which span: a bar for each queen with her name, broken while she was only expected. */
export function TenureLane({ colony, registry, on, scale, top, height }: LaneProps) {
  const line = top + height - 20;
  return (
    <g>
      {waitingOf(colony, registry).map(({ queen, from, to, came }) => {
        const start = Math.max(0, scale.x(from));
        const end = scale.x(to ?? on);
        return (
          <g key={queen}>
            <line
              class={styles.waiting}
              x1={start}
              x2={Math.max(start + 4, end)}
              y1={line + BAR / 2}
              y2={line + BAR / 2}
            />
            {to && !came && <path class={styles.failed} d={`M${end - 4} ${line + 1}l8 8m0-8l-8 8`} />}
          </g>
        );
      })}
      {colony.tenures.map((tenure, at) => {
        const queen = registry.queens.get(tenure.queen);
        const start = Math.max(0, scale.x(tenure.from));
        const end = scale.x(tenure.to ?? on);
        if (!queen || end <= 0) return null;
        const next = colony.tenures[at + 1];
        const room = (next ? Math.max(scale.x(next.from), start) : scale.width) - start;
        const words = `${queenTitle(queen)}, ${dayText(tenure.from)} to ${
          tenure.to ? `${dayText(tenure.to)}: ${tenure.ended ? QUEEN_LOSSES[tenure.ended] : 'gone'}` : 'now'
        }`;
        return (
          <a key={`${tenure.queen} ${tenure.from}`} href={routes.queen(queen.id)} aria-label={words}>
            <title>{words}</title>
            <rect class={styles.hit} x={start} y={top} width={Math.max(room, 8)} height={height} />
            <rect class={styles.bar} x={start} y={line} width={Math.max(2, end - start - 1)} height={BAR} />
            {tenure.endDeduced && <path class={styles.deduced} d={`M${end - 1} ${line - 4}v${BAR + 8}`} />}
            <text class={`${styles.name} ${styles[damCertainty(queen)]}`} x={start} y={line - 9}>
              {fitted(queenTitle(queen), room)}
            </text>
          </a>
        );
      })}
    </g>
  );
}

/** As much of a name as the room holds, at about 8 pixels a letter. */
function fitted(name: string, room: number): string {
  const letters = Math.floor(room / 8.2);
  if (name.length <= letters) return name;
  return letters < 3 ? '' : `${name.slice(0, letters - 1)}…`;
}
