import type { Compass } from '../../src/journal/entry-parts.ts';
import type { HeadState } from '../../src/registry/queries.ts';
import styles from './HiveMark.module.css';

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
  readonly ended?: boolean;
}

/**
 * A hive seen from above, with who heads it told by form: filled, a queen proven through a winter; a dot, laying;
 * a broken outline, one expected; a stroke across, nobody known. A bar outside is the entrance.
 */
export function HiveMark({ head, entrance, size = 32, ended = false }: HiveMarkProps) {
  return (
    <svg class={styles.hive} width={size} height={size} viewBox="0 0 32 32" aria-hidden="true">
      <rect
        x="7"
        y="7"
        width="18"
        height="18"
        rx="1"
        class={head === 'proven' && !ended ? styles.full : styles.open}
        stroke-dasharray={head === 'expected' ? '3.6 3.6' : undefined}
      />
      {head === 'laying' && !ended && <circle cx="16" cy="16" r="4" class={styles.full} />}
      {(head === 'nobody-known' || ended) && <path d="M7 25 25 7" class={styles.open} />}
      {ended && <path d="M7 7 25 25" class={styles.open} />}
      {entrance && <Door entrance={entrance} />}
    </svg>
  );
}

/** The entrance is a bar beside the wall, or at the corner where it looks between two winds. */
function Door({ entrance }: { readonly entrance: Compass }) {
  const away = entrance.length === 2 ? 30.5 : 29.5;
  return <path d={`M11 ${away}h10`} class={styles.door} transform={`rotate(${TURN[entrance]} 16 16)`} />;
}
