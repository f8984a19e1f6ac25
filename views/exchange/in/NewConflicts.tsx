import type { Disagreement } from '../../../src/journal/journal.ts';
import { DisagreementView } from '../disagreements/DisagreementView.tsx';
import styles from './Incoming.module.css';

/** Entries that two keepers corrected each in their own way: both versions, and which one would count. */
export function NewConflicts({ disagreements }: { readonly disagreements: readonly Disagreement[] }) {
  if (disagreements.length === 0) return null;
  return (
    <section class={styles.part} aria-labelledby="conflicts">
      <h2 id="conflicts">What you disagree on</h2>
      <p class={styles.prose}>
        Both versions are kept. Until it is settled, the one written last counts; once taken in, you can
        settle each on the Exchange page.
      </p>
      {disagreements.map((each) => (
        <DisagreementView key={each.about} disagreement={each} />
      ))}
    </section>
  );
}
