import type { RoughDay } from '../../../src/journal/day.ts';
import { useStore } from '../../app/store-context.ts';
import { TextField } from '../../parts/Field.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import { type QueenEventProps, queenMeant } from './told.ts';
import { WhichQueen } from './WhichQueen.tsx';

/** A name for a queen, hers alone. A name borne by another is pointed out. */
export function Named({ colony, queens, told, tell, onSaved }: QueenEventProps) {
  const store = useStore();
  const { name = '' } = told;
  const her = queenMeant(queens, told);
  const day = store.on.value as string as RoughDay;
  const same = [...store.registry.value.queens.values()].find(
    (each) => each.id !== her?.id && each.name?.toLowerCase() === name.trim().toLowerCase(),
  );
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`Queen named ${name.trim()}`}
      drafts={
        her && name.trim() ? [{ kind: 'queen-named', day, queen: her.id, name: name.trim() }] : undefined
      }
      onSaved={onSaved}
      missing={her ? 'Write her name.' : 'Choose the queen.'}
    >
      {queens.length > 1 && (
        <WhichQueen queens={queens} value={her?.id} onChange={(next) => tell({ queen: next })} />
      )}
      <TextField
        label="Her name"
        value={name}
        onChange={(next) => tell({ name: next })}
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
