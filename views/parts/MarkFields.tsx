import type { MarkColour } from '../../src/journal/entries/queen.ts';
import { ChoiceRow } from './ChoiceRow.tsx';
import { TextField } from './Field.tsx';
import { colourOfYear } from './marking.ts';
import { sentence } from './words.ts';

const COLOURS: readonly MarkColour[] = ['white', 'yellow', 'red', 'green', 'blue', 'other'];

export interface MarkFieldsProps {
  readonly colour: MarkColour | undefined;
  readonly number: string;
  /** The year she emerged in, as far as it is known; it suggests the colour. */
  readonly year: string;
  readonly onColour: (colour: MarkColour | undefined) => void;
  readonly onNumber: (number: string) => void;
}

/** Her mark: the colour, with that of her year named by the international convention, and the number. */
export function MarkFields({ colour, number, year, onColour, onNumber }: MarkFieldsProps) {
  const known = /^\d{4}/.exec(year.trim())?.[0];
  const suggested = known ? colourOfYear(Number(known)) : undefined;
  return (
    <>
      <ChoiceRow
        label="Mark"
        value={colour}
        onChange={onColour}
        last={suggested}
        hint={
          suggested && `${sentence(suggested)} is the colour of ${known} by the international convention.`
        }
        options={COLOURS.map((value) => ({ value, label: sentence(value) }))}
      />
      {colour && (
        <TextField label="Number on the mark" value={number} onChange={onNumber} hint="If she bears one." />
      )}
    </>
  );
}
