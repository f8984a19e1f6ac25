import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import type { Wish } from './sketch.ts';
import styles from './WishFields.module.css';

const PARTS = [
  { value: '2', label: 'Two' },
  { value: '3', label: 'Three' },
  { value: '4', label: 'Four' },
] as const;
const QUEEN = [
  { value: 'nucleus', label: 'Goes with a nucleus' },
  { value: 'stays', label: 'Stays on the stand' },
] as const;
const PLACE = [
  { value: 'yard', label: 'In this yard' },
  { value: 'away', label: 'Out of flying range' },
] as const;

export interface WishFieldsProps {
  readonly wish: Wish;
  readonly onChange: (wish: Wish) => void;
}

/** Into how many parts, where the old queen goes, and where the parts will stand. */
export function WishFields({ wish, onChange }: WishFieldsProps) {
  return (
    <div class={styles.wish}>
      <ChoiceRow
        label="Parts"
        required
        options={PARTS}
        value={String(wish.parts) as '2' | '3' | '4'}
        onChange={(parts) => parts && onChange({ ...wish, parts: Number(parts) as Wish['parts'] })}
      />
      <ChoiceRow
        label="The old queen"
        required
        options={QUEEN}
        value={wish.queenStays ? 'stays' : 'nucleus'}
        onChange={(queen) => queen && onChange({ ...wish, queenStays: queen === 'stays' })}
      />
      <ChoiceRow
        label="The parts taken off stand"
        required
        options={PLACE}
        value={wish.takenAway ? 'away' : 'yard'}
        hint="In this yard the flying bees go back to the old stand."
        onChange={(place) => place && onChange({ ...wish, takenAway: place === 'away' })}
      />
    </div>
  );
}
