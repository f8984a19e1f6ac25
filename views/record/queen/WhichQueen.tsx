import type { QueenId } from '../../../src/journal/ids.ts';
import { queenTitle } from '../../../src/registry/queries.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';

export interface WhichQueenProps {
  readonly queens: readonly Queen[];
  readonly value: QueenId | undefined;
  readonly onChange: (queen: QueenId | undefined) => void;
}

/** Which of the queens of a hive is meant; not asked where there is only one. */
export function WhichQueen({ queens, value, onChange }: WhichQueenProps) {
  if (queens.length < 2) return null;
  return (
    <ChoiceRow
      label="Which queen"
      size="hive"
      options={queens.map((queen) => ({ value: queen.id, label: queenTitle(queen) }))}
      value={value}
      onChange={onChange}
    />
  );
}
