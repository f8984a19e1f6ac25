import { winterYears } from '../../src/journal/day-words.ts';
import type { WinterCount } from './summaries.ts';
import styles from './WinterBars.module.css';

/** Queens shown as single squares up to this many in a winter; beyond it as a bar to scale. */
const MOST_SQUARES = 8;
const SQUARE = 7;
const STEP = 9;
const COLUMN = 19;
const HEIGHT = MOST_SQUARES * STEP;

/** Winters shown, counted back from the last. */
const MOST_WINTERS = 7;

/** Winter by winter, a square for each queen that went in, filled if she came out. The words say the same. */
export function WinterBars({ winters: all }: { readonly winters: readonly WinterCount[] }) {
  const winters = all.slice(-MOST_WINTERS);
  const most = Math.max(1, ...winters.map(({ wentIn }) => wentIn));
  const step = most > MOST_SQUARES ? HEIGHT / most : STEP;
  const height = Math.min(HEIGHT, most * STEP);
  const words = winters.map(
    ({ spring, wentIn, cameOut }) => `winter ${winterYears(spring)}: ${cameOut} of ${wentIn} came out`,
  );
  return (
    <div class={styles.bars} role="img" aria-label={words.join('; ')}>
      <svg width={winters.length * COLUMN} height={height + 18} aria-hidden="true">
        {winters.map(({ spring, wentIn, cameOut }, column) => (
          <g key={spring} transform={`translate(${column * COLUMN} 0)`}>
            <title>{words[column]}</title>
            {Array.from({ length: wentIn }, (_, index) => (
              <rect
                key={index}
                class={index < cameOut ? styles.out : styles.lost}
                x={(COLUMN - SQUARE) / 2 + 0.5}
                y={height - (index + 1) * step + 1.5}
                width={SQUARE - 1}
                height={Math.max(1, step - 3)}
              />
            ))}
            <text x={COLUMN / 2} y={height + 14}>
              {String(spring).slice(2)}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}
