import type { QueenId } from '../../../src/journal/ids.ts';
import { queenTitle } from '../../../src/registry/queries.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { comingText } from '../../parts/queen-words.ts';
import { sentence } from '../../parts/words.ts';

export interface WhichQueenProps {
  readonly label?: string;
  readonly hint?: string;
  readonly queens: readonly Queen[];
  readonly value: QueenId | undefined;
  readonly onChange: (queen: QueenId | undefined) => void;
}

/** Which of the queens of a hive is meant. Those without a name yet are told apart by where they come from. */
export function WhichQueen({ label = 'Which queen', queens, ...choice }: WhichQueenProps) {
  const { registry, on } = useStore();
  const options = queens.map((queen) => {
    const hint = comingText(queen, registry.value, on.value);
    return { value: queen.id, label: sentence(queenTitle(queen)), ...(hint ? { hint } : {}) };
  });
  return <ChoiceRow label={label} size="hive" options={options} {...choice} />;
}
