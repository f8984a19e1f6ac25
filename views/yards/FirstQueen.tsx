import { RoughDay } from '../../src/journal/day.ts';
import type { MarkColour } from '../../src/journal/entries/queen.ts';
import type { Draft } from '../../src/journal/entry.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { newQueenId } from '../../src/journal/new-ids.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { TextField } from '../parts/Field.tsx';
import { MarkFields } from '../parts/MarkFields.tsx';

/** What is said of the queen of a colony that begins. */
export interface FirstQueenFacts {
  readonly there?: 'laying' | 'not-laying' | 'not-known' | undefined;
  readonly name: string;
  readonly year: string;
  readonly background: string;
  readonly colour?: MarkColour | undefined;
  readonly mark: string;
}

export const NO_QUEEN: FirstQueenFacts = { name: '', year: '', background: '', mark: '' };

const THERE = [
  { value: 'laying', label: 'Laying' },
  { value: 'not-laying', label: 'Not laying yet' },
  { value: 'not-known', label: 'Not known' },
] as const;

/** The queen who heads a new colony: whether she is known, and what is known of her. */
export function FirstQueen(props: {
  readonly value: FirstQueenFacts;
  readonly onChange: (value: FirstQueenFacts) => void;
  /** The keeper wanted to save: what is wrong is said. */
  readonly asked: boolean;
}) {
  const { value, onChange, asked } = props;
  const known = value.there === 'laying' || value.there === 'not-laying';
  return (
    <>
      <ChoiceRow
        label="Its queen"
        options={THERE}
        value={value.there}
        onChange={(there) => onChange({ ...value, there })}
      />
      {known && (
        <>
          <TextField
            label="Her name"
            value={value.name}
            onChange={(name) => onChange({ ...value, name })}
            hint="Hers alone, not the box's and not her dam's. May stay empty."
          />
          <TextField
            label="When she emerged"
            value={value.year}
            onChange={(year) => onChange({ ...value, year })}
            inputMode="numeric"
            placeholder="2024 or 2024-06"
            hint="A year or a month will do. May stay empty."
            problem={asked ? queenProblem(value) : undefined}
          />
          <TextField
            label="Where her kind comes from"
            value={value.background}
            onChange={(background) => onChange({ ...value, background })}
            hint="A population without records, such as local bees. May stay empty."
          />
          <MarkFields
            colour={value.colour}
            number={value.mark}
            year={value.year}
            onColour={(colour) => onChange({ ...value, colour })}
            onNumber={(mark) => onChange({ ...value, mark })}
          />
        </>
      )}
    </>
  );
}

/** What is wrong with what was said of her; nothing where she may be written down. */
export function queenProblem({ there, year }: FirstQueenFacts): string | undefined {
  const told = there === 'laying' || there === 'not-laying';
  if (!told || year.trim() === '' || RoughDay.safeParse(year.trim()).success) return undefined;
  return 'Write a year, a month or a day: 2024, 2024-06 or 2024-06-14.';
}

/** The entries that bring the queen in; none when she is not known. */
export function queenDrafts(facts: FirstQueenFacts, colony: ColonyId, day: RoughDay): readonly Draft[] {
  if (facts.there !== 'laying' && facts.there !== 'not-laying') return [];
  const born = RoughDay.safeParse(facts.year.trim());
  return [
    {
      kind: 'queen-entered',
      day,
      queen: newQueenId(),
      colony,
      laying: facts.there === 'laying',
      ...(facts.name.trim() ? { name: facts.name.trim() } : {}),
      ...(born.success ? { born: born.data } : {}),
      ...(facts.background.trim() ? { background: facts.background.trim() } : {}),
      ...(facts.colour ? { colour: facts.colour } : {}),
      ...(facts.mark.trim() ? { mark: facts.mark.trim() } : {}),
    },
  ];
}
