import type { CellAge } from '../../src/journal/entries/increase.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { labelOn, queenTitle } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import {
  otherColonies,
  type PlanPart,
  type PlanQueen,
  queenOf,
  queensToGive,
  type SplitPlan,
} from './plan.ts';

export interface PartQueenChoiceProps {
  readonly plan: SplitPlan;
  readonly part: PlanPart;
  readonly registry: Registry;
  readonly onPart: (part: PlanPart) => void;
}

const HOW = [
  { value: 'raises-own', label: 'Raises her own' },
  { value: 'given-cells', label: 'Given cells' },
  { value: 'given-queen', label: 'Given a queen' },
  { value: 'none', label: 'Nothing yet' },
] as const;

const FROM = [
  { value: 'eggs', label: 'Eggs' },
  { value: 'young-brood', label: 'Young brood' },
  { value: 'open-cells', label: 'Open cells' },
  { value: 'capped-cells', label: 'Capped cells' },
] as const;

const AGES = [
  { value: 'open', label: 'Open' },
  { value: 'capped', label: 'Capped' },
  { value: 'emerging', label: 'Emerging' },
  { value: 'unknown', label: 'Not known' },
] as const satisfies readonly { value: CellAge; label: string }[];

/** What a part without the old queen has for a queen. */
export function PartQueenChoice({ plan, part, registry, onPart }: PartQueenChoiceProps) {
  const choice = queenOf(plan, part);
  if (choice.how === 'old-queen') {
    return <p>To give this part another queen, first lift the old queen into another box.</p>;
  }
  const set = (queen: PlanQueen | undefined) => {
    const { queen: _, ...rest } = part;
    onPart(queen ? { ...rest, queen } : rest);
  };
  return (
    <>
      <ChoiceRow
        label="Its queen"
        required
        value={choice.how}
        options={HOW}
        onChange={(how) => how && set(FIRST[how])}
      />
      {choice.how === 'raises-own' && (
        <ChoiceRow
          label="Raised from"
          required
          value={choice.from}
          options={FROM}
          onChange={(from) => from && set({ how: 'raises-own', from })}
        />
      )}
      {choice.how === 'given-cells' && (
        <GivenCells plan={plan} registry={registry} choice={choice} onChange={set} />
      )}
      {choice.how === 'given-queen' && (
        <SelectField
          label="The queen"
          value={choice.queen}
          none="Choose"
          options={queensToGive(registry, plan).map((id) => queenOption(registry, id))}
          onChange={(queen) => set({ how: 'given-queen', ...(queen ? { queen } : {}) })}
        />
      )}
    </>
  );
}

const FIRST: Readonly<Record<PlanQueen['how'], PlanQueen>> = {
  'raises-own': { how: 'raises-own', from: 'eggs' },
  'given-cells': { how: 'given-cells', age: 'unknown' },
  'given-queen': { how: 'given-queen' },
  none: { how: 'none' },
};

interface GivenCellsProps {
  readonly plan: SplitPlan;
  readonly registry: Registry;
  readonly choice: Extract<PlanQueen, { how: 'given-cells' }>;
  readonly onChange: (queen: PlanQueen) => void;
}

function GivenCells({ plan, registry, choice, onChange }: GivenCellsProps) {
  const { cellsFrom, layer, ...base } = choice;
  const build = (from: ColonyId | undefined, dam: QueenId | undefined, age = base.age): PlanQueen => ({
    how: 'given-cells',
    age,
    ...(from ? { cellsFrom: from } : {}),
    ...(dam ? { layer: dam } : {}),
  });
  const queens = [...registry.queens.values()].filter(
    ({ state }) => state.is === 'laying' || state.is === 'gone',
  );
  return (
    <>
      <SelectField
        label="The cells hung in"
        value={cellsFrom}
        none="This same box"
        options={otherColonies(registry, plan).map((colony) => ({
          value: colony.id,
          label: labelOn(colony, plan.day),
        }))}
        onChange={(from) => onChange(build(from, layer))}
      />
      <SelectField
        label="Her eggs they are"
        hint="The queen who laid the eggs, wherever the frame hung."
        value={layer}
        none="Whoever laid in that box"
        options={queens.map(({ id }) => queenOption(registry, id))}
        onChange={(dam) => onChange(build(cellsFrom, dam))}
      />
      <ChoiceRow
        label="Age of the cells"
        required
        value={choice.age}
        options={AGES}
        onChange={(age) => age && onChange(build(cellsFrom, layer, age))}
      />
    </>
  );
}

function queenOption(registry: Registry, id: QueenId): { readonly value: QueenId; readonly label: string } {
  const queen = registry.queens.get(id);
  const colony = queen?.expectedIn ?? queen?.tenures.findLast(({ to }) => to === undefined)?.colony;
  const box = colony && registry.colonies.get(colony)?.label;
  return { value: id, label: `${queen ? queenTitle(queen) : id}${box ? `, in ${box}` : ''}` };
}
