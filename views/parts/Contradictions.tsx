import type { Contradiction } from '../../src/registry/state.ts';
import styles from './Contradictions.module.css';
import { TextField } from './Field.tsx';

export interface ContradictionsProps {
  readonly contradictions: readonly Contradiction[];
  /** Reasons by rule, as the keeper gives them. */
  readonly reasons: Readonly<Record<string, string>>;
  readonly onReason: (rule: string, reason: string) => void;
}

/** What an entry would contradict: what stands in the records, what would fix it, and the way to overrule it. */
export function Contradictions({ contradictions, reasons, onReason }: ContradictionsProps) {
  if (contradictions.length === 0) return null;
  const rules = [...new Map(contradictions.map((each) => [each.code, each])).values()];
  return (
    <section class={styles.all} role="alert" aria-label="This contradicts the records">
      <h2>This contradicts the records</h2>
      {rules.map(({ code, because, found, remedies }) => (
        <div key={code} class={styles.one}>
          <p>
            <b>{because}</b> By the records: {found}.
          </p>
          <ul>
            {remedies.map((remedy) => (
              <li key={remedy}>{remedy}</li>
            ))}
          </ul>
          <TextField
            label="If it is so all the same, say why"
            value={reasons[code] ?? ''}
            onChange={(reason) => onReason(code, reason)}
          />
        </div>
      ))}
    </section>
  );
}

/** The overruling that goes with an entry: each rule with a reason. */
export function overruledBy(reasons: Readonly<Record<string, string>>): { rule: string; reason: string }[] {
  return Object.entries(reasons)
    .filter(([, reason]) => reason.trim() !== '')
    .map(([rule, reason]) => ({ rule, reason: reason.trim() }));
}
