import { useEffect, useState } from 'preact/hooks';
import type { Photo } from '../../../src/exchange/journal-file/index.ts';
import { useStore } from '../../app/store-context.ts';

/** Those photographs of a file that are not on this device. */
export function useNewPhotos(photos: readonly Photo[]): readonly Photo[] {
  const store = useStore();
  const [fresh, setFresh] = useState<readonly Photo[]>([]);
  useEffect(() => {
    let wanted = true;
    Promise.all(photos.map(async (photo) => ((await store.photo(photo.id)) ? [] : [photo]))).then((each) => {
      if (wanted) setFresh(each.flat());
    });
    return () => {
      wanted = false;
    };
  }, [photos]);
  return fresh;
}
