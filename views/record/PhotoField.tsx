import { useId, useState } from 'preact/hooks';
import type { PhotoId } from '../../src/journal/ids.ts';
import { useStore } from '../app/store-context.ts';
import { PhotoRow } from '../parts/PhotoRow.tsx';
import styles from './PhotoField.module.css';
import { smaller } from './smaller-photo.ts';

export interface PhotoFieldProps {
  readonly value: readonly PhotoId[];
  readonly onChange: (value: PhotoId[]) => void;
}

/** Photographs from the camera or the album, made smaller and kept on the device. */
export function PhotoField({ value, onChange }: PhotoFieldProps) {
  const store = useStore();
  const id = useId();
  const [trouble, setTrouble] = useState<string>();
  const add = async (files: FileList | null) => {
    const ids: PhotoId[] = [];
    setTrouble(undefined);
    for (const file of files ?? []) {
      const saved = await store.savePhoto(await smaller(file));
      if (saved.ok) ids.push(saved.value);
      else setTrouble(saved.problems.map(({ because, remedy }) => `${because} ${remedy}`).join(' '));
    }
    if (ids.length > 0) onChange([...value, ...ids]);
  };
  return (
    <div class={styles.field}>
      {value.length > 0 && <PhotoRow photos={value} />}
      <div class={styles.row}>
        <label class={styles.add} for={id}>
          {value.length > 0 ? 'Another photograph' : 'Photograph'}
        </label>
        <input
          id={id}
          class={styles.input}
          type="file"
          accept="image/*"
          multiple
          onChange={(event) => add(event.currentTarget.files)}
        />
        {value.length > 0 && (
          <button type="button" class={styles.remove} onClick={() => onChange([])}>
            Leave out
          </button>
        )}
      </div>
      {trouble && <p class={styles.trouble}>{trouble}</p>}
    </div>
  );
}
