import { useState } from 'preact/hooks';
import { type Entry, kindTitle } from '../../../src/journal/entry.ts';
import type { Disagreement } from '../../../src/journal/journal.ts';
import { routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { SavingNotices } from '../../parts/SavingNotices.tsx';
import { useSaving } from '../../parts/use-saving.ts';
import { useToday } from '../../parts/use-today.ts';
import styles from './Disagreements.module.css';
import { DisagreementView } from './DisagreementView.tsx';
import { settlingDrafts } from './settle.ts';

const SHOWN = 5;

/** Entries that stand in several versions by different hands, each with a way to settle it. */
export function Disagreements() {
  const { disagreements } = useStore();
  const [all, setAll] = useState(false);
  const standing = disagreements.value;
  if (standing.length === 0) return null;
  const shown = all ? standing : standing.slice(0, SHOWN);
  return (
    <section class={styles.part} id="disagreements" aria-labelledby="disagreements-title">
      <h2 id="disagreements-title">What you disagree on</h2>
      <p class={styles.prose}>
        These entries were corrected by different hands, each in its own way. The one written last counts
        until you choose; choosing writes a new correction, and the other versions stay readable.
      </p>
      {shown.map((each) => (
        <Settle key={each.about} disagreement={each} />
      ))}
      {shown.length < standing.length && (
        <div>
          <Button onPress={() => setAll(true)}>Show all {standing.length}</Button>
        </div>
      )}
    </section>
  );
}

function Settle({ disagreement }: { readonly disagreement: Disagreement }) {
  const saving = useSaving();
  const today = useToday();
  const title = `Settled: ${kindTitle(disagreement.counts.kind)}`;
  const choose = (version: Entry) => void saving.save(settlingDrafts(disagreement, version, today), title);
  return (
    <div class={styles.settle}>
      <DisagreementView
        disagreement={disagreement}
        act={(version) => (
          <Button disabled={saving.busy} onPress={() => choose(version)}>
            {version.id === disagreement.counts.id ? 'Let this one stand' : 'This one counts'}
          </Button>
        )}
      />
      <SavingNotices saving={saving} />
      <p>
        Neither is right? <a href={routes.entry(disagreement.counts.id)}>Correct the one that counts</a>.
      </p>
    </div>
  );
}
