import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import type { ColonyId, YardId } from '../../../src/journal/ids.ts';
import { isLiving } from '../../../src/registry/queries.ts';
import type { Colony } from '../../../src/registry/state.ts';
import { go, routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { awaitingOutcome, byRoof, winterInQuestion } from '../../parts/colony-facts.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { Form } from '../../parts/Form.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { useSaving } from '../../parts/use-saving.ts';
import { count, sentence, winterText } from '../../parts/words.ts';
import { OutcomeLine } from './OutcomeLine.tsx';
import { NO_OUTCOME, type Outcome, outcomeDraft } from './outcome.ts';
import styles from './WinterWalk.module.css';

/** The winter outcome of a whole yard in one walk: each hive alive or dead by a tap, all saved together. */
export function WinterWalk({ id }: { readonly id?: string }) {
  const store = useStore();
  const saving = useSaving();
  const on = store.on.value;
  const yard = store.registry.value.yards.get(id as YardId);
  const winter = winterInQuestion(on);
  const [outcomes, setOutcomes] = useState<ReadonlyMap<ColonyId, Outcome>>(new Map());
  const [day, setDay] = useState(on as string as RoughDay);
  if (!yard)
    return (
      <PageHeader
        title="This yard is not in these records"
        above={{ label: 'Yards', href: routes.yards() }}
      />
    );
  const waiting = awaitingOutcome(store.registry.value, yard, winter, on).filter((colony) =>
    isLiving(colony, on),
  );
  const walk = byRoof(waiting, on).flat();
  const drafts = walk.flatMap(
    (colony) => outcomeDraft(outcomes.get(colony.id) ?? NO_OUTCOME, colony.id, winter, day) ?? [],
  );
  const save = async () => {
    if (drafts.length === 0) return;
    if (await saving.save(drafts, `${sentence(winterText(winter))} at ${yard.name}`))
      go(routes.yard(yard.id));
  };
  return (
    <>
      <PageHeader
        above={{ label: yard.name, href: routes.yard(yard.id) }}
        title={sentence(winterText(winter))}
        lead={`${count(walk.length, 'colony', 'colonies')} of ${yard.name} to tell of. What is not tapped stays open.`}
      />
      {walk.length === 0 ? (
        <EmptyState action={{ label: `To ${yard.name}`, href: routes.yard(yard.id) }}>
          Every colony that stood here in that winter has its outcome written down.
        </EmptyState>
      ) : (
        <Form saving={saving} onSubmit={save} submit={`Save ${count(drafts.length, 'outcome')}`}>
          <DayInput label="Seen on" value={day} onChange={setDay} />
          <ul class={styles.walk}>
            {walk.map((colony: Colony) => (
              <OutcomeLine
                key={colony.id}
                colony={colony}
                winter={winter}
                value={outcomes.get(colony.id) ?? NO_OUTCOME}
                onChange={(outcome) => setOutcomes(new Map(outcomes).set(colony.id, outcome))}
              />
            ))}
          </ul>
        </Form>
      )}
    </>
  );
}
