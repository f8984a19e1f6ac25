import { scaleLinear } from 'd3-scale';
import type { SurvivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import { useWidth } from '../parts/use-width.ts';
import styles from './CurveDrawing.module.css';
import { atRisk, bandPath, stepPath } from './curve-path.ts';

const HEIGHT = 176;
const TOP = 10;
const BASE = 122;
const LEFT = 58;
const RIGHT = 8;

export interface CurveDrawingProps {
  readonly curve: SurvivalCurve;
  /** All queens together, drawn behind it. */
  readonly all?: SurvivalCurve;
  readonly winters: number;
}

/** Steps of survival with their limits, all lines behind, and under each winter how many faced it. */
export function CurveDrawing({ curve, all, winters }: CurveDrawingProps) {
  const { box, width } = useWidth();
  const x = scaleLinear([0, winters], [LEFT, Math.max(LEFT + 1, width - RIGHT)]);
  const y = scaleLinear([0, 1], [BASE, TOP]);
  const faced = atRisk(curve);
  return (
    <div ref={box}>
      {width > 0 && (
        <svg
          width={width}
          height={HEIGHT}
          role="img"
          aria-label="Share surviving by winters; the table below says the same"
        >
          {[0, 0.5, 1].map((share) => (
            <g key={share}>
              <line class={styles.grid} x1={LEFT} x2={width - RIGHT} y1={y(share)} y2={y(share)} />
              <text class={styles.share} x={LEFT - 8} y={y(share) + 4}>
                {100 * share}&nbsp;%
              </text>
            </g>
          ))}
          <path class={styles.band} d={bandPath(curve, { x, y })} />
          {all && <path class={styles.all} d={stepPath(all, { x, y })} />}
          <path class={styles.steps} d={stepPath(curve, { x, y })} />
          {Array.from({ length: winters + 1 }, (_, at) => (
            <text key={at} class={styles.winter} x={x(at)} y={BASE + 18}>
              {at}
            </text>
          ))}
          <text class={styles.rowName} x="0" y={BASE + 18}>
            winters
          </text>
          <text class={styles.rowName} x="0" y={BASE + 40}>
            faced
          </text>
          {faced.map((number, at) => (
            <text key={at} class={styles.faced} x={(x(at) + x(at + 1)) / 2} y={BASE + 40}>
              {number}
            </text>
          ))}
        </svg>
      )}
    </div>
  );
}
