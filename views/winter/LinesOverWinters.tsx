import { useMemo } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { CurveTable } from './CurveTable.tsx';
import { LinePanel } from './LinePanel.tsx';
import styles from './LinesOverWinters.module.css';
import { lineSurvival } from './line-survival.ts';
import { testWords } from './words.ts';

/** How the lines fare over winters: one small drawing each on the same axes, and whether they differ by more than luck. */
export function LinesOverWinters() {
  const registry = useRegistry();
  const on = useStore().on.value;
  const facts = lineFacts(registry, on);
  const survival = useMemo(
    () => lineSurvival(registry, (queen) => facts.byId.get(queen as QueenId)?.line),
    [registry, facts],
  );
  const lines = survival.lines.flatMap(({ line, curve }) => {
    const summary = facts.lines.find((each) => each.line === line);
    return summary ? [{ summary, curve }] : [];
  });
  const winters = Math.max(1, ...lines.map(({ curve }) => curve.steps.at(-1)?.time ?? 0));
  if (lines.length === 0) {
    return (
      <EmptyState>
        For each line, the share of its queens that came through one, two and more winters will stand here,
        once winter outcomes are written down.
      </EmptyState>
    );
  }
  return (
    <>
      <p class={styles.test}>
        {survival.test
          ? testWords(survival.test)
          : 'With one line, or no loss yet, there is nothing to compare.'}
      </p>
      <div class={styles.panels}>
        {lines.map(({ summary, curve }) => (
          <LinePanel key={summary.line} line={summary} curve={curve} all={survival.all} winters={winters} />
        ))}
      </div>
      <p class={styles.key}>
        Each queen counts with her colonies from her first winter on; one superseded, given away or still
        there is watched until then. Black: share of the line that came through so many winters
        (Kaplan-Meier). Shaded: what the numbers allow, 95 times of 100 (Greenwood). Broken: all lines
        together. Faced: queens that went into that winter. Losses to animals, weather or sale are set aside.
        Drawn towards its neighbours: few colonies say little, so their share is moved towards that of the
        colonies beside them.
      </p>
      <CurveTable lines={lines} />
    </>
  );
}
