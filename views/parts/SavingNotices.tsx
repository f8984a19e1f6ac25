import { plainDays } from './days.ts';
import { TextField } from './Field.tsx';
import { Notice } from './Notice.tsx';
import styles from './SavingNotices.module.css';
import type { Saving } from './use-saving.ts';

export interface SavingNoticesProps {
  readonly saving: Saving;
  readonly nameField?: ((path: string) => string) | undefined;
}

/** What stands against saving: each contradiction with the ways out and room for a reason, each invalid field. */
export function SavingNotices({ saving, nameField = (path) => path }: SavingNoticesProps) {
  const { contradictions, problems } = saving;
  if (contradictions.length === 0 && problems.length === 0) return null;
  return (
    <div class={styles.notices}>
      {contradictions.map((each) => (
        <Notice key={`${each.code} ${each.found}`} tone="warn" title={each.because}>
          <p>By the records: {plainDays(each.found)}.</p>
          <ul class={styles.remedies}>
            {each.remedies.map((remedy) => (
              <li key={remedy}>{remedy}</li>
            ))}
          </ul>
          <TextField
            label="It is so all the same, because"
            value={saving.reasons.get(each.code) ?? ''}
            onChange={(reason) => saving.overrule(each.code, reason)}
            hint="With a reason it is saved as you say; the reason stays beside the entry."
          />
        </Notice>
      ))}
      {problems.map((problem) => (
        <Notice
          key={problem.where + problem.field + problem.because}
          tone="warn"
          title={problem.field ? `${nameField(problem.field)}: ${problem.because}` : problem.because}
        >
          <p>
            Found: {problem.found}. {problem.remedy}
          </p>
        </Notice>
      ))}
    </div>
  );
}
