import type { Compass, Place } from '../../src/journal/entry-parts.ts';
import type { ColonyId, YardId } from '../../src/journal/ids.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import { useStore } from '../app/store-context.ts';
import { TextField } from './Field.tsx';
import { SelectField } from './SelectField.tsx';
import { COMPASS } from './words.ts';

const WINDS = Object.entries(COMPASS).map(([value, label]) => ({ value: value as Compass, label }));

export interface PlaceFieldsProps {
  readonly yard: YardId | undefined;
  readonly value: Place;
  readonly onChange: (value: Place) => void;
  /** The colony that is being placed, left out of its own neighbours. */
  readonly self?: ColonyId;
}

/** Where in the yard a colony stands: its stand, the way its entrance looks, and who shares its roof. */
export function PlaceFields({ yard, value, onChange, self }: PlaceFieldsProps) {
  const { registry, on } = useStore();
  const neighbours = yard ? coloniesAt(registry.value, yard, on.value).filter(({ id }) => id !== self) : [];
  const change = <K extends keyof Place>(field: K, next: Place[K]) => {
    const { [field]: _before, ...rest } = value;
    onChange(next === undefined || next === '' ? rest : { ...rest, [field]: next });
  };
  return (
    <>
      <TextField
        label="Stand"
        value={value.stand ?? ''}
        onChange={(text) => change('stand', text)}
        hint="Its place in the row, such as 4. May stay empty."
      />
      <SelectField
        label="Entrance looks to the"
        none="not said"
        value={value.entrance}
        onChange={(wind) => change('entrance', wind)}
        options={WINDS}
      />
      {neighbours.length > 0 && (
        <SelectField
          label="Under one roof with"
          none="a box of its own"
          value={value.underRoofWith}
          onChange={(id) => change('underRoofWith', id)}
          options={neighbours.map(({ id, label }) => ({ value: id, label }))}
          hint="For a divided box: two colonies, two entrances."
        />
      )}
    </>
  );
}
