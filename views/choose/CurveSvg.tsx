import { useRef } from 'preact/hooks';
import { type drawCurve, nearestPoint } from './curve-scale.ts';
import styles from './TradeOff.module.css';
import { markDigits, spreads } from './words.ts';

export const CURVE_HEIGHT = 230;
export const CURVE_MARGIN = { top: 14, right: 14, bottom: 34, left: 50 };

export interface CurveSvgProps {
  readonly drawing: ReturnType<typeof drawCurve>;
  readonly width: number;
  readonly here: { readonly x: number; readonly y: number };
  /** The first point that keeps the limit of kinship; 0 where all do. */
  readonly within: number;
  readonly onChoose: (point: number) => void;
}

/** The curve drawn; the point on it follows the finger. */
export function CurveSvg({ drawing, width, here, within, onChoose }: CurveSvgProps) {
  const held = useRef(false);
  const gainDigits = markDigits(
    drawing.gainTicks.map(({ value }) => value),
    1,
  );
  const kinshipDigits = markDigits(
    drawing.kinshipTicks.map(({ value }) => 100 * value),
    0,
  );
  const limit = drawing.places[within];
  const follow = (event: PointerEvent) => {
    const left = (event.currentTarget as Element).getBoundingClientRect().left;
    onChoose(nearestPoint(drawing.places, event.clientX - left));
  };
  return (
    <svg
      class={styles.curve}
      width={width}
      height={CURVE_HEIGHT}
      aria-hidden="true"
      onPointerDown={(event) => {
        held.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        follow(event);
      }}
      onPointerMove={(event) => held.current && follow(event)}
      onPointerUp={() => {
        held.current = false;
      }}
      onPointerCancel={() => {
        held.current = false;
      }}
    >
      {drawing.gainTicks.map(({ value, y }) => (
        <g key={value}>
          <line class={styles.grid} x1={CURVE_MARGIN.left} x2={width - CURVE_MARGIN.right} y1={y} y2={y} />
          <text class={styles.tick} x={CURVE_MARGIN.left - 8} y={y + 5} text-anchor="end">
            {spreads(value, gainDigits)}
          </text>
        </g>
      ))}
      {drawing.kinshipTicks.map(({ value, x }) => (
        <text key={value} class={styles.tick} x={x} y={CURVE_HEIGHT - 12} text-anchor="middle">
          {(100 * value).toFixed(kinshipDigits)}&nbsp;%
        </text>
      ))}
      <path class={styles.line} d={drawing.path} />
      {drawing.places.map(({ point, x, y }) => (
        <circle key={point} class={point < within ? styles.beyond : styles.dot} cx={x} cy={y} r="2.5" />
      ))}
      {limit && within > 0 && (
        <>
          <path
            class={styles.limit}
            d={`M${limit.x} ${CURVE_MARGIN.top}V${CURVE_HEIGHT - CURVE_MARGIN.bottom}`}
          />
          <text class={styles.tick} x={limit.x + 5} y={CURVE_HEIGHT - CURVE_MARGIN.bottom - 6}>
            your limit
          </text>
        </>
      )}
      <path
        class={styles.drop}
        d={`M${here.x} ${here.y}V${CURVE_HEIGHT - CURVE_MARGIN.bottom}M${here.x} ${here.y}H${CURVE_MARGIN.left}`}
      />
      <circle class={styles.here} cx={here.x} cy={here.y} r="9" />
    </svg>
  );
}
