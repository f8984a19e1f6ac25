import { useEffect, useState } from 'preact/hooks';
import type { StoredPhoto } from '../../../src/store/index.ts';
import { useStore } from '../../app/store-context.ts';

/** Photographs of the open records with their bytes together; undefined until they are read. */
export interface Photos {
  readonly all: readonly StoredPhoto[];
  readonly bytes: number;
}

/** The photographs on this device; undefined until they are read. */
export function usePhotos(): Photos | undefined {
  const store = useStore();
  const [photos, setPhotos] = useState<Photos>();
  const records = store.records.value;
  const revision = store.registry.value.revision;
  useEffect(() => {
    let wanted = true;
    store.photos().then((all) => {
      if (wanted) setPhotos({ all, bytes: all.reduce((sum, { bytes }) => sum + bytes.byteLength, 0) });
    });
    return () => {
      wanted = false;
    };
  }, [records, revision]);
  return photos;
}
