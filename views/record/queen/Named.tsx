import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import { useStore } from '../../app/store-context.ts';
import { TextField } from '../../parts/Field.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './QueenForm.tsx';
import { WhichQueen } from './WhichQueen.tsx';

/** A name for a queen, hers alone. A name borne by another is pointed out. */
export function Named({ colony, queens }: QueenEventProps) {
  const store = useStore();
  const [queen, setQueen] = useState(queens.length === 1 ? queens[0]?.id : undefined);
  const [name, setName] = useState('');
  const day = store.on.value as string as RoughDay;
  const same = [...store.registry.value.queens.values()].find(
    (each) => each.id !== queen && each.name?.toLowerCase() === name.trim().toLowerCase(),
  );
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`Queen named ${name.trim()}`}
      drafts={queen && name.trim() ? [{ kind: 'queen-named', day, queen, name: name.trim() }] : undefined}
      missing={queen ? 'Write her name.' : 'Choose the queen.'}
    >
      {queens.length > 1 && <WhichQueen queens={queens} value={queen} onChange={setQueen} />}
      <TextField
        label="Her name"
        value={name}
        onChange={setName}
        hint="It goes with her wherever she moves, and does not pass to her daughters or her box."
        problem={
          same && name.trim()
            ? `Another queen is called ${same.name}. Two of one name are hard to tell apart.`
            : undefined
        }
      />
    </RecordFrame>
  );
}
