import { useState } from 'preact/hooks';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import styles from './Out.module.css';
import { OutAll } from './OutAll.tsx';
import { OutQueen } from './OutQueen.tsx';

type Of = 'all' | 'queen';
const WHOSE = [
  { value: 'all', label: 'All records' },
  { value: 'queen', label: 'One queen' },
] as const;

/** What leaves the keeper's hands: everything, or the pedigree of one queen; what is in it stands there before it is saved. */
export function Out({ queen }: { readonly queen?: string | undefined }) {
  const { registry } = useStore();
  const [of, setOf] = useState<Of>(queen ? 'queen' : 'all');
  const empty = registry.value.entries.length === 0;
  return (
    <section class={styles.out} aria-labelledby="out">
      <h2 id="out">Out of your hands</h2>
      {empty ? (
        <p>
          Nothing is on record yet. All your records, or the pedigree of one queen, can be saved from here
          later.
        </p>
      ) : (
        <>
          <ChoiceRow
            label="Whose records"
            hideLabel
            required
            size="quiet"
            value={of}
            onChange={(next) => next && setOf(next)}
            options={WHOSE}
          />
          {of === 'all' ? <OutAll /> : <OutQueen start={queen} />}
        </>
      )}
    </section>
  );
}
