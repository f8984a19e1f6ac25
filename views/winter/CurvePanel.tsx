import type { ComponentChildren } from 'preact';
import type { SurvivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import { count } from '../parts/words.ts';
import { CurveDrawing } from './CurveDrawing.tsx';
import styles from './CurvePanel.module.css';

export interface CurvePanelProps {
  readonly title: ComponentChildren;
  readonly curve: SurvivalCurve;
  /** All queens together, drawn thin behind it; absent where the curve is theirs. */
  readonly all?: SurvivalCurve;
  /** Winters on the axis of every panel. */
  readonly winters: number;
  readonly children?: ComponentChildren;
}

/** One group of queens over winters: its steps with their limits, and how many queens and losses they rest on. */
export function CurvePanel({ title, curve, all, winters, children }: CurvePanelProps) {
  return (
    <section class={styles.panel}>
      <h3 class={styles.head}>{title}</h3>
      <CurveDrawing curve={curve} {...(all ? { all } : {})} winters={winters} />
      <p class={styles.figures}>
        {count(curve.subjects, 'queen')}, {count(curve.deaths, 'loss', 'losses')}.
      </p>
      {children}
    </section>
  );
}
