import styles from './drawing.module.css';
import type { TimeScale } from './time-scale.ts';
import { monthTicks } from './time-scale.ts';
import { type View, viewX } from './view.ts';

export interface AxisProps {
  readonly scale: TimeScale;
  readonly view: View;
  /** Pixels of the drawing beside which the names stand. */
  readonly plot: number;
  readonly winters: ReadonlyMap<number, { readonly wentIn: number; readonly cameOut: number }>;
}

/** Pixels that a year takes to be written out, and to be written short. */
const YEAR_ROOM = 40;
const SHORT_ROOM = 22;
const COUNT_ROOM = 92;
const LABEL_ROOM = 120;

/** The years over the drawing, and how many queens came out of each winter. Stays in sight as the page scrolls. */
export function Axis({ scale, view, plot, winters }: AxisProps) {
  const year = (scale.years[1]?.from ?? plot) * view.kx;
  const counts = year >= COUNT_ROOM;
  const firstCounted = scale.years.find(({ winter }) => winter && winters.has(winter.spring));
  const firstCount = viewX(view, firstCounted?.winter?.from ?? 0);
  return (
    <div class={styles.axis}>
      <svg width={plot} height={counts ? 42 : 26} aria-hidden="true">
        {counts && firstCount > LABEL_ROOM && (
          <text class={styles.axisLabel} x="0" y="36">
            came through:
          </text>
        )}
        {scale.years.map((each) => {
          const from = viewX(view, each.from);
          const to = viewX(view, each.winter?.from ?? each.to);
          const middle = (Math.max(0, from) + Math.min(plot, to)) / 2;
          const room = Math.min(plot, to) - Math.max(0, from);
          const count = each.winter?.over ? winters.get(each.winter.spring) : undefined;
          return (
            <g key={each.year}>
              {room > SHORT_ROOM && (
                <text class={styles.year} x={middle} y="18">
                  {room > YEAR_ROOM ? each.year : `’${String(each.year).slice(2)}`}
                </text>
              )}
              {counts && count && isInside(viewX(view, each.winter?.to ?? 0), plot) && (
                <text x={keepInside(viewX(view, each.winter?.to ?? 0) - 8, plot)} y="36">
                  {count.cameOut} of {count.wentIn}
                </text>
              )}
              {monthTicks(each.year, scale, view.kx).map(({ x, name }) => (
                <text key={name} x={viewX(view, x)} y="36">
                  {name}
                </text>
              ))}
            </g>
          );
        })}
      </svg>
    </div>
  );
}

/** Half the width of a count of queens, in pixels. */
const HALF_COUNT = 30;

function isInside(x: number, plot: number): boolean {
  return x >= 0 && x <= plot + 1;
}

function keepInside(x: number, plot: number): number {
  return Math.min(plot - HALF_COUNT, Math.max(HALF_COUNT, x));
}
