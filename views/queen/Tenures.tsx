import type { Queen } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { drawnYears, monthTicks, type TimeScale, timeScale } from '../lines/time-scale.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { useWidth } from '../parts/use-width.ts';
import queenStyles from './Queen.module.css';
import styles from './Tenures.module.css';
import { axisDays, type TenureRow, tenureRows } from './tenure-rows.ts';

const BAR = { height: 18, at: 5, thick: 8 } as const;

/** Where she has been: a bar for each colony she headed, broken while she was awaited, over the winters. */
export function Tenures({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const { box, width } = useWidth();
  const rows = tenureRows(registry, queen);
  if (rows.length === 0) return null;
  const { from, to } = axisDays(rows, on);
  const scale = timeScale(from, to, width / Math.max(0.05, drawnYears(from, to)));
  return (
    <section class={`${queenStyles.section} ${queenStyles.tenures}`} aria-labelledby="tenures">
      <h2 id="tenures">Where she has been</h2>
      <div ref={box} class={styles.box}>
        {width > 0 && <Winters scale={scale} />}
        {width > 0 && (
          <ol class={styles.rows}>
            {rows.map((row) => (
              <li key={`${row.colony} ${row.from ?? row.awaitedFrom}`} class={styles.row}>
                <p>
                  <ColonyLabel colony={row.colony} /> <span class={styles.words}>{row.words}</span>
                </p>
                <Bar row={row} scale={scale} />
              </li>
            ))}
          </ol>
        )}
        {width > 0 && <Years scale={scale} />}
      </div>
    </section>
  );
}

function Bar({ row, scale }: { readonly row: TenureRow; readonly scale: TimeScale }) {
  const end = row.to === undefined ? scale.width : scale.x(row.to);
  const from = row.from === undefined ? end : scale.x(row.from);
  const middle = BAR.at + BAR.thick / 2;
  return (
    <svg width={scale.width} height={BAR.height} aria-hidden="true">
      {row.awaitedFrom !== undefined && (
        <line class={styles.awaited} x1={scale.x(row.awaitedFrom)} x2={from} y1={middle} y2={middle} />
      )}
      {row.from !== undefined && (
        <rect class={styles.bar} x={from} y={BAR.at} width={Math.max(3, end - from)} height={BAR.thick} />
      )}
    </svg>
  );
}

/** The winters behind all rows. */
function Winters({ scale }: { readonly scale: TimeScale }) {
  return (
    <svg class={styles.winters} width={scale.width} height="100%" aria-hidden="true">
      {scale.years.map(
        ({ year, winter }) =>
          winter && <rect key={year} x={winter.from} y="0" width={winter.to - winter.from} height="100%" />,
      )}
    </svg>
  );
}

const YEAR_ROOM = 34;

function Years({ scale }: { readonly scale: TimeScale }) {
  return (
    <svg class={styles.years} width={scale.width} height="22" aria-hidden="true">
      {scale.years.map(({ year, from, to, winter }) => {
        const start = Math.max(0, from);
        const end = winter?.from ?? to;
        const months = monthTicks(year, scale, 1);
        return (
          end - start >= YEAR_ROOM && (
            <g key={year}>
              {months.length === 0 && (
                <text x={(start + end) / 2} y="16">
                  {year}
                </text>
              )}
              {months.map(({ name, x }, index) => (
                <text key={name} x={x} y="16">
                  {index === 0 || months.length < 3 ? `${name} ${year}` : name}
                </text>
              ))}
            </g>
          )
        );
      })}
    </svg>
  );
}
