import type { RoughDay } from '../../../src/journal/day.ts';
import type { PhotoId } from '../../../src/journal/ids.ts';
import { useStore } from '../../app/store-context.ts';
import { DayInput } from '../../parts/DayInput.tsx';
import { TextArea } from '../../parts/Field.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { useKept } from '../../parts/use-kept.ts';
import type { RecordFormProps } from '../index.tsx';
import { PhotoField } from '../PhotoField.tsx';
import { RecordFrame } from '../RecordFrame.tsx';

interface KeptNote {
  readonly text: string;
  readonly photos: readonly PhotoId[];
  readonly day?: RoughDay;
}

const EMPTY: KeptNote = { text: '', photos: [] };

/** Anything in the keeper's own words, with pictures. */
export function NoteForm({ colony }: RecordFormProps) {
  const on = useStore().on.value;
  const kept = useKept(`note ${colony.id}`, EMPTY);
  const { text, photos } = kept.value;
  const day = kept.value.day ?? (on as string as RoughDay);
  const said = text.trim() || (photos.length > 0 ? 'Photograph' : '');
  return (
    <RecordFrame
      colony={colony}
      kind="note"
      title={`Note on ${colony.label}`}
      drafts={
        said
          ? [
              {
                kind: 'note',
                day,
                about: { of: 'colony', colony: colony.id },
                text: said,
                ...(photos.length > 0 ? { photos: [...photos] } : {}),
              },
            ]
          : undefined
      }
      missing="Write or dictate something, or add a picture."
      onSaved={kept.forget}
    >
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <TextArea
        label="Note"
        value={text}
        onChange={(next) => kept.set({ ...kept.value, text: next })}
        rows={5}
        hint="The microphone of the keyboard writes here too."
      />
      <PhotoField value={photos} onChange={(next) => kept.set({ ...kept.value, photos: next })} />
      <DayInput label="Day" value={day} onChange={(next) => kept.set({ ...kept.value, day: next })} rough />
    </RecordFrame>
  );
}
