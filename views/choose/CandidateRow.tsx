import { useState } from 'preact/hooks';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import spoken from '../style/spoken.module.css';
import { CandidateDetail } from './CandidateDetail.tsx';
import styles from './CandidateRow.module.css';
import { evidenceOf, evidenceWords } from './evidence.ts';
import { LineOf } from './LineOf.tsx';
import { MeritBar } from './MeritBar.tsx';
import type { MeritScale } from './merit-scale.ts';
import { fliesAt, isTakenIn } from './plan.ts';
import type { Candidate } from './ranking.ts';
import type { Choice } from './use-choice.ts';
import { chanceWords, daughtersWords, reliabilityWords, spreads, whyWords } from './words.ts';

export interface CandidateRowProps {
  readonly row: Candidate;
  readonly choice: Choice;
  readonly scale: MeritScale;
}

/** One queen: who she is, her merit with its doubt, why, how many daughters, flown where. Opened: the numbers. */
export function CandidateRow({ row, choice, scale }: CandidateRowProps) {
  const [open, setOpen] = useState(false);
  const evidence = evidenceOf(choice.evaluated, row.id);
  return (
    <li>
      <details class={styles.row} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <span class={styles.who}>
            <span class={styles.name}>
              <QueenName queen={row.queen} plain hideMark />
            </span>
            {row.colony && <ColonyLabel colony={row.colony} plain />}
            <LineOf line={row.line} lines={choice.lines.lines} />
          </span>
          <span class={styles.known}>
            {reliabilityWords(row.reliability)}: {evidenceWords(evidence)}
          </span>
          <span class={styles.drawn}>
            <MeritBar merit={row.merit} error={row.error} scale={scale} />
            <span class={spoken.only}>
              Merit {spreads(row.merit)} spreads, give or take {spreads(row.error).slice(1)}.
              {row.standing !== 'first' && ` The first is truly above her ${chanceWords(row.firstAbove)}.`}
            </span>
          </span>
          <span class={styles.why}>{whyWords(row.contributions)}</span>
          <Planned row={row} choice={choice} />
        </summary>
        {open && <CandidateDetail row={row} choice={choice} />}
      </details>
    </li>
  );
}

/** How many daughters, and where they fly; or why there are none. */
function Planned({ row, choice }: { readonly row: Candidate; readonly choice: Choice }) {
  if (!isTakenIn(row, choice.choosing)) {
    const elsewhere = row.yard && !row.mine ? `at ${choice.yardName(row.yard)}` : 'left out by you';
    return (
      <span class={styles.plan}>
        <span class={styles.none}>not in the choice</span>
        <span class={styles.where}>{elsewhere}</span>
      </span>
    );
  }
  if (!choice.plan) return <span class={styles.plan} />;
  const daughters = choice.plan.dams.find((dam) => dam.row.id === row.id)?.daughters ?? 0;
  const flies = fliesAt(choice.evaluated, row, choice.choosing.flownAt, choice.yards);
  const where = flies && (flies.any ? 'at any yard' : `at ${choice.yardName(flies.risk.yard)}`);
  return (
    <span class={styles.plan}>
      <span class={daughters > 0 ? styles.some : styles.none}>{daughtersWords(daughters)}</span>
      {daughters > 0 && where && <span class={styles.where}>{where}</span>}
    </span>
  );
}
