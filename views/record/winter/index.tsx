import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import { dayText } from '../../../src/journal/day-words.ts';
import type { ColonyId, YardId } from '../../../src/journal/ids.ts';
import type { Colony } from '../../../src/registry/state.ts';
import { go, routes } from '../../app/routes.ts';
import { useRegistry, useStore } from '../../app/store-context.ts';
import { byRoof, winterInQuestion } from '../../parts/colony-facts.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { Form } from '../../parts/Form.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { useSaving } from '../../parts/use-saving.ts';
import { count, sentence, winterText } from '../../parts/words.ts';
import { OutcomeLine } from './OutcomeLine.tsx';
import { NO_OUTCOME, type Outcome, outcomeDraft } from './outcome.ts';
import { toTell } from './to-tell.ts';
import styles from './WinterWalk.module.css';

/**
 * The winter outcome of a whole yard in one walk: each hive alive or dead by a tap, all saved together. Looking back, it
 * is the yard as it stood on that day.
 */
export function WinterWalk({ id }: { readonly id?: string }) {
  const store = useStore();
  const saving = useSaving();
  const on = store.on.value;
  const registry = useRegistry();
  const yard = registry.yards.get(id as YardId);
  const winter = winterInQuestion(on);
  const [outcomes, setOutcomes] = useState<ReadonlyMap<ColonyId, Outcome>>(new Map());
  const [day, setDay] = useState(on as string as RoughDay);
  if (!yard)
    return (
      <PageHeader
        title={
          store.registry.value.yards.has(id as YardId)
            ? `This yard was not there yet on ${dayText(on)}`
            : 'This yard is not in these records'
        }
        above={{ label: 'Yards', href: routes.yards() }}
      />
    );
  const { waiting, toldLater } = toTell(registry, store.registry.value, { yard, winter, on });
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
        lead={leadOf(walk.length, toldLater.length, yard.name)}
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

function leadOf(open: number, toldLater: number, yard: string): string {
  const told =
    toldLater === 0 ? '' : ` ${toldLater} more ${toldLater === 1 ? 'is' : 'are'} told of on a later day.`;
  return `${count(open, 'colony', 'colonies')} of ${yard} to tell of.${told} What is not tapped stays open.`;
}
