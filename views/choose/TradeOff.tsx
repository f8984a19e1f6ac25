import { useMemo, useRef } from 'preact/hooks';
import { Button } from '../parts/Button.tsx';
import { useWidth } from '../parts/use-width.ts';
import { type CurvePoint, drawCurve, nearestPoint } from './curve-scale.ts';
import { planOf, thriftOf } from './plan.ts';
import styles from './TradeOff.module.css';
import type { Choice, Curve } from './use-choice.ts';
import { markDigits, percents, planWords, spreads } from './words.ts';

export interface TradeOffProps {
  readonly choice: Choice;
  readonly curve: Extract<Curve, { is: 'drawn' }>;
}

const HEIGHT = 230;
const MARGIN = { top: 14, right: 14, bottom: 34, left: 50 };

/** The whole curve of gain against kinship, and the point on it that the keeper stands on. */
export function TradeOff({ choice, curve }: TradeOffProps) {
  const { box, width } = useWidth();
  const { points, at } = curve;
  const mean = useMean(curve);
  const gainOf = (point: CurvePoint) => point.gain - mean;
  const drawing = drawCurve(points, gainOf, { width: Math.max(width, 200), height: HEIGHT, margin: MARGIN });
  const choose = (point: number) => choice.setChoosing({ thrift: thriftOf(points, point) });
  const here = drawing.places[at];
  const point = points[at];
  return (
    <div class={styles.tradeOff} ref={box}>
      <input
        class={styles.slide}
        type="range"
        min="0"
        max={points.length - 1}
        step="1"
        value={points.length - 1 - at}
        aria-label="Place on the curve, from least kinship to most gain"
        aria-valuetext={point && pointWords(choice, curve, at, gainOf(point))}
        onInput={(event) => choose(points.length - 1 - Number(event.currentTarget.value))}
      />
      {width > 0 && here && point && (
        <CurveSvg drawing={drawing} width={width} here={here} onChoose={choose} />
      )}
      <div class={styles.steps}>
        <Button look="quiet" disabled={at === points.length - 1} onPress={() => choose(at + 1)}>
          ‹ less kinship
        </Button>
        <Button look="quiet" disabled={at === 0} onPress={() => choose(at - 1)}>
          more gain ›
        </Button>
      </div>
      <CurveTable choice={choice} curve={curve} gainOf={gainOf} />
    </div>
  );
}

function useMean({ breeders }: TradeOffProps['curve']): number {
  return useMemo(
    () => breeders.reduce((sum, { row }) => sum + row.merit, 0) / (breeders.length || 1),
    [breeders],
  );
}

interface CurveSvgProps {
  readonly drawing: ReturnType<typeof drawCurve>;
  readonly width: number;
  readonly here: { readonly x: number; readonly y: number };
  readonly onChoose: (point: number) => void;
}

function CurveSvg({ drawing, width, here, onChoose }: CurveSvgProps) {
  const held = useRef(false);
  const gainDigits = markDigits(
    drawing.gainTicks.map(({ value }) => value),
    1,
  );
  const kinshipDigits = markDigits(
    drawing.kinshipTicks.map(({ value }) => 100 * value),
    0,
  );
  const follow = (event: PointerEvent) => {
    const left = (event.currentTarget as Element).getBoundingClientRect().left;
    onChoose(nearestPoint(drawing.places, event.clientX - left));
  };
  return (
    <svg
      class={styles.curve}
      width={width}
      height={HEIGHT}
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
          <line class={styles.grid} x1={MARGIN.left} x2={width - MARGIN.right} y1={y} y2={y} />
          <text class={styles.tick} x={MARGIN.left - 8} y={y + 5} text-anchor="end">
            {spreads(value, gainDigits)}
          </text>
        </g>
      ))}
      {drawing.kinshipTicks.map(({ value, x }) => (
        <text key={value} class={styles.tick} x={x} y={HEIGHT - 12} text-anchor="middle">
          {(100 * value).toFixed(kinshipDigits)}&nbsp;%
        </text>
      ))}
      <path class={styles.line} d={drawing.path} />
      {drawing.places.map(({ point, x, y }) => (
        <circle key={point} class={styles.dot} cx={x} cy={y} r="2.5" />
      ))}
      <path
        class={styles.drop}
        d={`M${here.x} ${here.y}V${HEIGHT - MARGIN.bottom}M${here.x} ${here.y}H${MARGIN.left}`}
      />
      <circle class={styles.here} cx={here.x} cy={here.y} r="9" />
    </svg>
  );
}

function dams(choice: Choice, curve: TradeOffProps['curve'], at: number): string {
  const shares = curve.points[at]?.shares ?? [];
  const plan = planOf(choice.evaluated, choice.ranking, curve.breeders, shares, choice.choosing);
  return planWords(plan.dams.map(({ row, daughters }) => ({ name: choice.nameOf(row.id), daughters })));
}

function pointWords(choice: Choice, curve: TradeOffProps['curve'], at: number, gain: number): string {
  const kinship = curve.points[at]?.groupKinship ?? 0;
  return `gain ${spreads(gain)}, kinship ${percents(kinship)}: ${dams(choice, curve, at)}`;
}

interface CurveTableProps extends TradeOffProps {
  readonly gainOf: (point: CurvePoint) => number;
}

/** The curve in figures. */
function CurveTable({ choice, curve, gainOf }: CurveTableProps) {
  return (
    <details class={styles.table}>
      <summary>The curve as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Kinship</th>
            <th scope="col">Gain</th>
            <th scope="col">Daughters</th>
          </tr>
        </thead>
        <tbody>
          {curve.points.map((point, at) => (
            <tr key={point.lambda} aria-current={at === curve.at ? 'true' : undefined}>
              <td>{(100 * point.groupKinship).toFixed(1)}&nbsp;%</td>
              <td>{gainOf(point).toFixed(2)}</td>
              <td>{dams(choice, curve, at)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
