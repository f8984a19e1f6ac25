import type { QueenId } from '../../src/journal/ids.ts';
import styles from './drawing.module.css';
import { hueClass } from './hue-class.ts';
import type { RenderProps } from './SvgLines.tsx';
import { viewX, viewY } from './view.ts';

/** Over each strip the letter and name of its line, and how many live. */
export function LineHeads({
  geometry,
  view,
  width,
  look,
}: Pick<RenderProps, 'geometry' | 'view' | 'look'> & { width: number }) {
  return geometry.strips.map(({ line, y }, index) => {
    const top = viewY(view, y);
    const title = look.lineTitle(line);
    return (
      <g key={line} class={hueClass(look.hue(line))}>
        {index > 0 && <line class={styles.stripRule} x1="0" x2={width} y1={top + 0.5} y2={top + 0.5} />}
        <rect class={styles.badge} x="0" y={top + 7} width="20" height="19" rx="3" />
        <text class={styles.letter} x="10" y={top + 21}>
          {title.letter}
        </text>
        <text class={styles.lineName} x="28" y={top + 22}>
          {title.name}
          <tspan class={styles.lineNote} dx="8">
            {title.note}
          </tspan>
        </text>
      </g>
    );
  });
}

export interface NamesProps extends Pick<RenderProps, 'geometry' | 'view' | 'plot' | 'gutter' | 'look'> {
  readonly isFaded: (id: QueenId) => boolean;
}

/** The names of those alive and awaited today, each at the end of her life line. */
export function NamesBeside({ geometry, view, plot, gutter, look, isFaded }: NamesProps) {
  return geometry.queens.map(({ life, y, from }) => {
    // Looking back, whoever was not born yet has no name here.
    const label = viewX(view, from) <= plot && look.hereLabel(life, gutter - 16);
    return (
      label && (
        <text
          key={life.id}
          class={`${styles.here} ${life.named ? '' : styles.unnamed} ${isFaded(life.id) ? styles.faded : ''}`}
          x={plot + 12}
          y={viewY(view, y) + 5}
        >
          {label.name}
          {label.box && (
            <tspan class={styles.box} dx="7">
              {label.box}
            </tspan>
          )}
        </text>
      )
    );
  });
}
