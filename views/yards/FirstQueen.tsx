import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { TextField } from '../parts/Field.tsx';
import { MarkFields } from '../parts/MarkFields.tsx';
import { DamFields } from './DamFields.tsx';
import { type FirstQueenFacts, yearProblem } from './first-queen.ts';

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
            problem={asked ? yearProblem(value) : undefined}
          />
          <DamFields value={value} onChange={onChange} asked={asked} />
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
