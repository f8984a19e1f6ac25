import { useState } from 'preact/hooks';
import type { RoughDay } from '../../../src/journal/day.ts';
import { newQueenId } from '../../../src/journal/new-ids.ts';
import { headOn } from '../../../src/registry/queries.ts';
import { useStore } from '../../app/store-context.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { TextField } from '../../parts/Field.tsx';
import { QueenName } from '../../parts/QueenName.tsx';
import { RecordFrame } from '../RecordFrame.tsx';
import type { QueenEventProps } from './told.ts';

/** An unmarked queen where a marked one was, and the like: probably a daughter by silent supersedure. */
export function AnotherFound({ colony, told, tell, onSaved }: QueenEventProps) {
  const { registry, on } = useStore();
  const { name = '', day = on.value as string as RoughDay } = told;
  const head = headOn(registry.value, colony, on.value);
  const [id] = useState(newQueenId);
  const instead = head ? { insteadOf: head.id } : {};
  const named = name.trim() ? { name: name.trim() } : {};
  return (
    <RecordFrame
      colony={colony}
      kind="queen"
      title={`Another queen in ${colony.label}`}
      drafts={[{ kind: 'queen-found', day, queen: id, colony: colony.id, ...instead, ...named }]}
      onSaved={onSaved}
    >
      <p>
        {head ? (
          <>
            The records then hold her for probably a daughter of <QueenName queen={head} />, who counts as
            superseded by deduction. If you know more, say so on her own page.
          </>
        ) : (
          'Her dam stays unknown until you say more on her own page.'
        )}
      </p>
      <TextField
        label="Her name"
        value={name}
        onChange={(next) => tell({ name: next })}
        hint="May stay empty."
      />
      <DayInput label="Found on" value={day} onChange={(next) => tell({ day: next })} />
    </RecordFrame>
  );
}
