import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { percents } from '../parts/percents.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { sentence } from '../parts/words.ts';
import styles from './DecisionSheet.module.css';
import { evidenceOf, evidenceWords } from './evidence.ts';
import { LineOf } from './LineOf.tsx';
import { MeritBar } from './MeritBar.tsx';
import type { MeritScale } from './merit-scale.ts';
import type { PlannedDam } from './plan.ts';
import type { Choice } from './use-choice.ts';
import { reliabilityWords, whyWords } from './words.ts';
import { brothersWords } from './yard-risk.ts';

export interface SheetRowProps {
  readonly dam: PlannedDam;
  readonly choice: Choice;
  readonly scale: MeritScale;
}

/** One dam on the sheet: who, how many, why, and where they fly. */
export function SheetRow({ dam: { row, daughters, flies }, choice, scale }: SheetRowProps) {
  return (
    <li class={styles.row}>
      <span class={styles.who}>
        <QueenName queen={row.queen} />
        {row.colony && <ColonyLabel colony={row.colony} />}
        <LineOf line={row.line} lines={choice.lines.lines} />
        <span class={styles.yard}>{row.yard && choice.yardName(row.yard)}</span>
      </span>
      <span class={styles.count}>
        <strong>{daughters}</strong>
        <span class={styles.boxes} aria-hidden="true">
          {Array.from({ length: Math.min(daughters, 12) }, (_, k) => (
            <i key={`box ${k + 1}`} />
          ))}
        </span>
      </span>
      <span class={styles.bar}>
        <MeritBar merit={row.merit} error={row.error} scale={scale} />
      </span>
      <span class={styles.why}>
        {whyWords(row.contributions)} {sentence(reliabilityWords(row.reliability))}:{' '}
        {evidenceWords(evidenceOf(choice.evaluated, row.id))}.
      </span>
      {flies && (
        <span class={styles.flies}>
          Fly at {flies.any ? 'any yard, as at ' : ''}
          {choice.yardName(flies.risk.yard)}: brood {percents(flies.risk.broodInbreeding)} inbred,{' '}
          {brothersWords(flies.risk)}.
        </span>
      )}
    </li>
  );
}
