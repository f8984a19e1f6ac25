import { useMemo } from 'preact/hooks';
import { survivalByGroup, winterShares } from '../../graph/merit/survival/group-survival.ts';
import type { SurvivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import { yardsInOrder } from '../parts/colony-facts.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { CurvePanel } from './CurvePanel.tsx';
import { CurveTable } from './CurveTable.tsx';
import { Differ } from './Differ.tsx';
import { FounderName } from './FounderName.tsx';
import { LineScores } from './LineScores.tsx';
import styles from './OverWinters.module.css';
import { firstYards, winterObservations } from './survival.ts';
import { YardShare } from './YardShare.tsx';

/** How lines and yards fare over winters: one small drawing each on the same axes, and whether they differ by more than luck. */
export function OverWinters() {
  const registry = useRegistry();
  const facts = lineFacts(registry, useStore().on.value);
  const seen = useMemo(() => winterObservations(registry), [registry]);
  const byLine = useMemo(
    () => survivalByGroup(seen, (queen) => facts.byId.get(queen as QueenId)?.line),
    [seen, facts],
  );
  const byYard = useMemo(() => {
    const yards = firstYards(seen);
    const yardOf = (queen: string) => yards.get(queen);
    return { ...survivalByGroup(seen, yardOf), ...winterShares(seen, yardOf) };
  }, [seen]);
  const lines = facts.lines.flatMap((line) => {
    const curve = byLine.groups.find(({ group }) => group === line.line)?.curve;
    return curve ? [{ line, curve, name: `${line.letter} ${line.title}` }] : [];
  });
  const yards = yardsInOrder(registry).flatMap(({ id, name }) => {
    const curve = byYard.groups.find(({ group }) => group === id)?.curve;
    const share = byYard.shares.find(({ group }) => group === id);
    return curve && share ? [{ name, curve, share }] : [];
  });
  const { all } = byLine;
  if (all.subjects === 0) {
    return (
      <EmptyState>
        For each line and yard, the share of its queens that came through one, two and more winters will stand
        here, once winter outcomes are written down.
      </EmptyState>
    );
  }
  const winters = Math.max(1, lastWinter(all));
  return (
    <>
      <section class={styles.part} aria-labelledby="by-line">
        <h2 id="by-line">By line</h2>
        <Differ test={byLine.test} groups="lines" />
        <div class={styles.panels}>
          {lines.map(({ line, curve }) => (
            <CurvePanel
              key={line.line}
              title={<FounderName line={line} />}
              curve={curve}
              all={all}
              winters={winters}
            >
              <LineScores line={line} />
            </CurvePanel>
          ))}
        </div>
        <CurveTable of="Line" curves={lines} />
      </section>
      <section class={styles.part} aria-labelledby="by-yard">
        <h2 id="by-yard">By yard</h2>
        {yards.length > 1 && <Differ test={byYard.test} groups="yards" />}
        <div class={styles.panels}>
          {yards.length > 1 && <CurvePanel title="All yards" curve={all} winters={winters} />}
          {yards.map(({ name, curve, share }) => (
            <CurvePanel
              key={name}
              title={name}
              curve={curve}
              winters={winters}
              {...(yards.length > 1 ? { all } : {})}
            >
              {yards.length > 1 && <YardShare share={share} towards={byYard.towards} />}
            </CurvePanel>
          ))}
        </div>
        <CurveTable
          of="Yard"
          curves={[...(yards.length > 1 ? [{ name: 'All yards', curve: all }] : []), ...yards]}
        />
      </section>
      <p class={styles.key}>
        Each queen counts with her colonies from her first winter on, at the yard where she faced it; one
        superseded, given away or still there is watched until then. Black: share that came through so many
        winters (Kaplan-Meier). Shaded: what the numbers allow, 95 times of 100 (Greenwood). Broken: all
        together. Faced: queens that went into that winter. Losses to animals, weather or sale are set aside.
        Drawn towards its neighbours, or towards all yards: few colonies say little, so their share is moved
        towards that of the colonies beside them, or of all.
      </p>
    </>
  );
}

function lastWinter(curve: SurvivalCurve): number {
  return curve.steps.at(-1)?.time ?? 0;
}
