import styles from './drawing.module.css';
import type { DrawnQueen } from './geometry.ts';
import { hueClass } from './hue-class.ts';
import type { View } from './view.ts';
import { viewX, viewY } from './view.ts';

export interface QueenLifeProps {
  readonly queen: DrawnQueen;
  readonly hue: number;
  readonly view: View;
  readonly faded: boolean;
  readonly chosen: boolean;
  readonly tooltip: string;
}

/** Length in pixels of the dots that begin a life whose first day is not known. */
const VAGUE = 10;

/**
 * One queen's time as a line: broken while she is awaited, whole while she heads a colony, a knot for every winter
 * crossed, and at its end what became of her.
 */
export function QueenLife({ queen, hue, view, faded, chosen, tooltip }: QueenLifeProps) {
  const { life } = queen;
  const y = viewY(view, queen.y);
  const from = viewX(view, queen.from);
  const about = life.startSure ? 0 : Math.min(VAGUE, viewX(view, queen.to) - from);
  const laying = Math.max(from + about, viewX(view, queen.laying ?? queen.to));
  const to = viewX(view, queen.to);
  const names = [
    styles.life,
    hueClass(hue),
    queen.carries ? '' : styles.closed,
    faded ? styles.faded : '',
    chosen ? styles.chosen : '',
  ];
  return (
    <g class={names.join(' ')}>
      <title>{tooltip}</title>
      {queen.reach > queen.to && <path class={styles.tail} d={`M${to} ${y}H${viewX(view, queen.reach)}`} />}
      {about > 0 && <path class={styles.about} d={`M${from} ${y}h${about}`} />}
      {laying > from + about && <path class={styles.awaited} d={`M${from + about} ${y}H${laying}`} />}
      {queen.laying !== undefined && <path class={styles.heads} d={`M${laying} ${y}H${to}`} />}
      {queen.winters.map(({ spring, x }) => (
        <circle key={spring} class={styles.knot} cx={viewX(view, x)} cy={y} r={queen.carries ? 4 : 3} />
      ))}
      {life.certainty === 'unknown' && life.dam === undefined && (
        <text class={styles.query} x={from - 4} y={y + 4}>
          ?
        </text>
      )}
      <EndMark fate={life.fate} x={to} y={y} />
    </g>
  );
}

interface EndMarkProps {
  readonly fate: DrawnQueen['life']['fate'];
  readonly x: number;
  readonly y: number;
}

/** What became of her: alive, awaited, came to nothing, died, left alive, not known. */
export function EndMark({ fate, x, y }: EndMarkProps) {
  switch (fate) {
    case 'living':
      return <circle class={styles.alive} cx={x} cy={y} r="5" />;
    case 'expected':
      return <circle class={styles.expected} cx={x} cy={y} r="4.5" />;
    case 'failed':
      return <path class={styles.end} d={`M${x - 3.5} ${y - 3.5}l7 7m0 -7l-7 7`} />;
    case 'died':
      return <path class={styles.end} d={`M${x} ${y - 5.5}v11`} />;
    case 'left':
      return <path class={styles.end} d={`M${x - 3} ${y - 5}l6 5l-6 5`} />;
    case 'unknown':
      return (
        <text class={styles.query} x={x + 9} y={y + 4}>
          ?
        </text>
      );
  }
}

/**
 * The names of those who are gone, written on their lives. A life that began before the window has its name at the
 * window's edge.
 */
export function LifeNames({ queens, view, plot, isFaded }: LifeNamesProps) {
  return queens.map(({ life, name, from, to, y, carries }) => {
    const start = viewX(view, from);
    const end = viewX(view, to);
    if (name === undefined || start > plot - EDGE || end < EDGE) return null;
    const names = [styles.name, carries ? styles.carriesName : '', isFaded(life.id) ? styles.faded : ''];
    return (
      <text key={life.id} class={names.join(' ')} x={Math.max(EDGE, start + 6)} y={viewY(view, y) - 6}>
        {name}
      </text>
    );
  });
}

/** Pixels from the window's edge within which a name would say nothing any more. */
const EDGE = 4;

export interface LifeNamesProps {
  readonly queens: readonly DrawnQueen[];
  readonly view: View;
  readonly plot: number;
  readonly isFaded: (id: DrawnQueen['life']['id']) => boolean;
}
