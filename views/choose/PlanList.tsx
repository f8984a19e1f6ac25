import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { LineOf } from './LineOf.tsx';
import styles from './PlanList.module.css';
import type { Plan } from './plan.ts';
import type { Choice } from './use-choice.ts';

/** The dams of a plan: a mark for each daughter, and where they fly. */
export function PlanList({ choice, plan }: { readonly choice: Choice; readonly plan: Plan }) {
  return (
    <ul class={styles.dams} aria-label={`${plan.daughters} daughters`}>
      {plan.dams.map(({ row, daughters, flies }) => (
        <li key={row.id}>
          <span class={styles.who}>
            <QueenName queen={row.queen} hideMark />
            {row.colony && <ColonyLabel colony={row.colony} />}
            <LineOf line={row.line} lines={choice.lines.lines} />
          </span>
          <strong>{daughters}</strong>
          <span class={styles.cells} aria-hidden="true">
            {Array.from({ length: Math.min(daughters, 24) }, (_, k) => (
              <i key={k} />
            ))}
          </span>
          <span class={styles.where}>
            {flies && (flies.any ? 'any yard' : choice.yardName(flies.risk.yard))}
          </span>
        </li>
      ))}
    </ul>
  );
}
