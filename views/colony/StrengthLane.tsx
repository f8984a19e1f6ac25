import type { Entry } from '../../src/journal/entry.ts';
import { strengthIn } from '../parts/colony-facts.ts';
import { number } from '../parts/words.ts';
import type { LaneProps } from './lane.ts';
import styles from './StrengthLane.module.css';

interface Seen {
  readonly day: Entry['day'];
  readonly frames: number;
}

/** Height that the words over the lane and over its highest dot take. */
const TITLE = 46;

/** Frames of bees as they were seen: a dot for each look, joined to be followed by the eye. */
export function StrengthLane({ colony, scale, top, height }: LaneProps) {
  const seen: readonly Seen[] = colony.entries.flatMap((entry) => {
    const frames = strengthIn(entry);
    return frames === undefined ? [] : [{ day: entry.day, frames }];
  });
  const most = Math.max(10, ...seen.map(({ frames }) => frames));
  const base = top + height - 6;
  const y = (frames: number) => base - ((height - TITLE) * frames) / most;
  const points = seen.map(({ day, frames }) => [scale.x(day), y(frames)] as const);
  return (
    <g>
      <text class={styles.title} x="0" y={top + 12}>
        Frames of bees
      </text>
      {seen.length === 0 && (
        <text class={styles.none} x="0" y={top + 34}>
          not seen yet
        </text>
      )}
      <polyline class={styles.line} points={points.map((point) => point.join(',')).join(' ')} />
      {seen.map(({ day, frames }, at) => {
        const [x, dotY] = points[at] ?? [0, 0];
        const last = at === seen.length - 1;
        return (
          <g key={`${day} ${at}`}>
            <circle class={styles.dot} cx={x} cy={dotY} r="3" />
            {last && (
              <text class={styles.value} x={Math.min(x, scale.width - 12)} y={dotY - 7}>
                {number(frames)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
