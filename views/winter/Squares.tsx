import type { Share } from './outcomes.ts';
import styles from './Squares.module.css';

const SIDE = 8;
const STEP = 10;
const IN_A_ROW = 4;
/** Colonies drawn one by one up to this many; beyond it the figures must do. */
const MOST = 24;

/** Colonies of one yard and winter as squares, filled from below: filled came through. The figures stand underneath. */
export function Squares({ share }: { readonly share: Share }) {
  const { alive, dead, outside } = share;
  const all = alive + dead + outside;
  if (all === 0) return <span class={styles.none}>–</span>;
  const rows = Math.ceil(all / IN_A_ROW);
  return (
    <span class={styles.cell}>
      {all <= MOST && (
        <svg width={IN_A_ROW * STEP} height={rows * STEP} aria-hidden="true">
          {Array.from({ length: all }, (_, at) => {
            const x = (at % IN_A_ROW) * STEP + 0.5;
            const y = (rows - 1 - Math.floor(at / IN_A_ROW)) * STEP + 1.5;
            return (
              <g key={at}>
                <rect
                  class={at < alive ? styles.alive : styles.dead}
                  x={x}
                  y={y}
                  width={SIDE - 1}
                  height={SIDE - 1}
                />
                {at >= alive + dead && (
                  <path class={styles.outside} d={`M${x} ${y + SIDE - 1}l${SIDE - 1} ${1 - SIDE}`} />
                )}
              </g>
            );
          })}
        </svg>
      )}
      {alive}/{alive + dead}
    </span>
  );
}
