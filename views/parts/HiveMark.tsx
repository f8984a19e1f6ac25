import type { Compass } from '../../src/journal/shared.ts';
import type { HeadState } from '../../src/registry/queries.ts';
import styles from './HiveMark.module.css';

export const HEAD_WORDS: Readonly<Record<HeadState, string>> = {
  proven: 'proven',
  laying: 'laying',
  expected: 'expected',
  'nobody-known': 'nobody known',
};

const TURN: Readonly<Record<Compass, number>> = {
  S: 0,
  SW: 45,
  W: 90,
  NW: 135,
  N: 180,
  NE: 225,
  E: 270,
  SE: 315,
};

export interface HiveMarkProps {
  readonly head: HeadState;
  /** The way the entrance looks; without it none is drawn. */
  readonly entrance?: Compass | undefined;
  /** Pixels. */
  readonly size?: number;
}

/**
 * A hive seen from above, with who heads it told by form: filled, a queen proven through a winter; a dot, laying;
 * a broken outline, one expected; a stroke across, nobody known. A bar outside is the entrance.
 */
export function HiveMark({ head, entrance, size = 24 }: HiveMarkProps) {
  return (
    <svg class={styles.hive} width={size} height={size} viewBox="0 0 24 24" aria-hidden="true">
      <rect
        x="4"
        y="4"
        width="16"
        height="16"
        rx="1"
        class={head === 'proven' ? styles.full : styles.open}
        stroke-dasharray={head === 'expected' ? '3.2 3.2' : undefined}
      />
      {head === 'laying' && <circle cx="12" cy="12" r="3.5" class={styles.full} />}
      {head === 'nobody-known' && <path d="M6 18 18 6" class={styles.open} />}
      {entrance && (
        <path d="M8.5 22.75h7" class={styles.door} transform={`rotate(${TURN[entrance]} 12 12)`} />
      )}
    </svg>
  );
}
