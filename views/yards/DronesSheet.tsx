import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { EntryOf } from '../../src/journal/entry.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import type { Yard } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { CheckList } from '../parts/CheckList.tsx';
import { Field, TextField } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';

export interface DronesSheetProps {
  readonly yard: Yard;
  readonly season: number;
  /** What was said for this season, or last for an earlier one: a starting point, saved only when confirmed. */
  readonly before: EntryOf<'drone-background'> | undefined;
  readonly onClose: () => void;
}

/** How large a share of the drones is the keeper's own, whose colonies they come from, and who the others are. */
export function DronesSheet({ yard, season, before, onClose }: DronesSheetProps) {
  const store = useStore();
  const saving = useSaving();
  const colonies = coloniesAt(store.registry.value, yard.id, store.on.value);
  const [percent, setPercent] = useState(before ? Math.round(before.ownShare * 100) : undefined);
  const [flown, setFlown] = useState<readonly ColonyId[]>(
    before?.droneColonies?.map(({ colony }) => colony) ?? [],
  );
  const [background, setBackground] = useState(before?.background ?? '');
  const [asked, setAsked] = useState(false);

  const save = async () => {
    setAsked(true);
    if (percent === undefined || background.trim() === '') return;
    const weight = new Map(before?.droneColonies?.map((each) => [each.colony, each.weight]));
    const written = await saving.save(
      [
        {
          kind: 'drone-background',
          day: store.on.value as string as RoughDay,
          yard: yard.id,
          season,
          ownShare: percent / 100,
          background: background.trim(),
          ...(before?.backgroundKinship === undefined ? {} : { backgroundKinship: before.backgroundKinship }),
          ...(flown.length > 0
            ? { droneColonies: flown.map((colony) => ({ colony, weight: weight.get(colony) ?? 1 })) }
            : {}),
        },
      ],
      `Drones at ${yard.name}, ${season}`,
    );
    if (written) onClose();
  };

  return (
    <Sheet title={`Drones at ${yard.name}, ${season}`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <Field
          label={`From your own colonies: ${percent === undefined ? 'not said' : `${percent} %`}`}
          hint="A judgement is enough: how many colonies of others stand within two or three kilometres?"
          problem={asked && percent === undefined ? 'Set the share, even roughly.' : undefined}
        >
          {({ id, describedBy }) => (
            <input
              id={id}
              type="range"
              min="0"
              max="100"
              step="5"
              value={percent ?? 50}
              aria-describedby={describedBy}
              onInput={(event) => setPercent(Number(event.currentTarget.value))}
            />
          )}
        </Field>
        <CheckList
          label="Colonies whose drones flew"
          hint="None chosen: every colony of the yard counts the same."
          options={colonies.map(({ id, label }) => ({ value: id, label }))}
          value={flown}
          onChange={setFlown}
        />
        <TextField
          label="The other drones are of"
          value={background}
          onChange={setBackground}
          suggestions={backgrounds(store.registry.value.droneBackgrounds.values())}
          hint="A name for that population, such as village bees. The same name means the same population."
          problem={asked && background.trim() === '' ? 'Give the population a name.' : undefined}
        />
      </Form>
    </Sheet>
  );
}

function backgrounds(entries: Iterable<EntryOf<'drone-background'>>): readonly string[] {
  return [...new Set([...entries].map(({ background }) => background))].sort();
}
