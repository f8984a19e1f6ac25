import type { RoughDay } from '../../../src/journal/day.ts';
import type { Colony, TreatmentSpan } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { treatmentsOf } from '../../mites/treatments.ts';
import { Button } from '../../parts/Button.tsx';
import { dayInYear } from '../../parts/days.ts';
import { SavingNotices } from '../../parts/SavingNotices.tsx';
import { useSaving } from '../../parts/use-saving.ts';
import { count, sentence } from '../../parts/words.ts';
import styles from './RunningTreatments.module.css';

/** Treatments still in a colony, each taken out by one tap. */
export function RunningTreatments({ colony }: { readonly colony: Colony }) {
  const store = useStore();
  const saving = useSaving();
  const on = store.on.value;
  const running = treatmentsOf(store.registry.value, colony).filter(({ to }) => to === undefined);
  if (running.length === 0) return null;
  const takeOut = (span: TreatmentSpan) =>
    saving.save(
      [{ kind: 'treatment-ended', day: on as string as RoughDay, treatment: span.id }],
      `${sentence(span.entry.active)} taken out`,
    );
  return (
    <section class={styles.running} aria-label="Treatments still in">
      {running.map((span) => (
        <div key={span.id} class={styles.one}>
          <p>
            {sentence(span.entry.active)} is in since {dayInYear(span.from, on)}
            {span.colonies.length > 1 && `, in ${count(span.colonies.length, 'colony', 'colonies')}`}
          </p>
          <Button onPress={() => takeOut(span)}>Taken out today</Button>
        </div>
      ))}
      <SavingNotices saving={saving} />
    </section>
  );
}
