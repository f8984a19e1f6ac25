import type { SurvivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import type { LineSummary } from '../lines/summaries.ts';
import { IntervalBar } from '../parts/IntervalBar.tsx';
import { count } from '../parts/words.ts';
import { CurveDrawing } from './CurveDrawing.tsx';
import { FounderName } from './FounderName.tsx';
import styles from './LinePanel.module.css';
import { scoreWords } from './words.ts';

export interface LinePanelProps {
  readonly line: LineSummary;
  readonly curve: SurvivalCurve;
  /** All queens of all lines, drawn thin behind it. */
  readonly all: SurvivalCurve;
  /** Winters on the axis of every panel. */
  readonly winters: number;
}

/** One line over winters: its steps with their limits, and in words how far it can be told from luck. */
export function LinePanel({ line, curve, all, winters }: LinePanelProps) {
  const { score } = line;
  const survival = score?.survival;
  return (
    <section class={styles.panel}>
      <h3 class={styles.head}>
        <FounderName line={line} />
      </h3>
      <CurveDrawing curve={curve} all={all} winters={winters} />
      <p class={styles.figures}>
        {count(curve.subjects, 'queen')}, {count(curve.deaths, 'loss', 'losses')}.
      </p>
      {score && <p class={styles.says}>{scoreWords(score)}</p>}
      {score && survival && (
        <IntervalBar
          label="Drawn towards its neighbours"
          value={100 * survival.mean}
          low={100 * survival.low}
          high={100 * survival.high}
          max={100}
          digits={0}
          unit="%"
          threshold={{ value: Math.round(100 * (score.expectedShare ?? 0)), label: "Neighbours' share" }}
        />
      )}
    </section>
  );
}
