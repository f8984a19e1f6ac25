import { useMemo } from 'preact/hooks';
import { Button } from '../parts/Button.tsx';
import { percents } from '../parts/percents.ts';
import { Unfold } from '../parts/Unfold.tsx';
import { useWidth } from '../parts/use-width.ts';
import { CURVE_HEIGHT, CURVE_MARGIN, CurveSvg } from './CurveSvg.tsx';
import { type CurvePoint, drawCurve } from './curve-scale.ts';
import { planOf, thriftOf } from './plan.ts';
import styles from './TradeOff.module.css';
import type { Choice, Curve } from './use-choice.ts';
import { planWords, spreads } from './words.ts';

export interface TradeOffProps {
  readonly choice: Choice;
  readonly curve: Extract<Curve, { is: 'drawn' }>;
}

/** The whole curve of gain against kinship, and the point on it that the keeper stands on. */
export function TradeOff({ choice, curve }: TradeOffProps) {
  const { box, width } = useWidth();
  const { points, at, within } = curve;
  const mean = useMean(curve);
  const gainOf = (point: CurvePoint) => point.gain - mean;
  const drawing = drawCurve(points, gainOf, {
    width: Math.max(width, 200),
    height: CURVE_HEIGHT,
    margin: CURVE_MARGIN,
  });
  const choose = (point: number) => choice.setChoosing({ thrift: thriftOf(points, Math.max(within, point)) });
  const here = drawing.places[at];
  const point = points[at];
  return (
    <div class={styles.tradeOff} ref={box}>
      <input
        class={styles.slide}
        type="range"
        min="0"
        max={points.length - 1 - within}
        step="1"
        value={points.length - 1 - at}
        aria-label="Place on the curve, from least kinship to most gain"
        aria-valuetext={point && pointWords(choice, curve, at, gainOf(point))}
        onInput={(event) => choose(points.length - 1 - Number(event.currentTarget.value))}
      />
      {width > 0 && here && point && (
        <CurveSvg drawing={drawing} width={width} here={here} within={within} onChoose={choose} />
      )}
      <div class={styles.steps}>
        <Button look="quiet" disabled={at === points.length - 1} onPress={() => choose(at + 1)}>
          ‹ less kinship
        </Button>
        <Button look="quiet" disabled={at === within} onPress={() => choose(at - 1)}>
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
    <Unfold class={styles.table} title="The curve as a table">
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
              <td>
                {(100 * point.groupKinship).toFixed(1)}&nbsp;%{at < curve.within && ', over your limit'}
              </td>
              <td>{gainOf(point).toFixed(2)}</td>
              <td>{dams(choice, curve, at)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Unfold>
  );
}
