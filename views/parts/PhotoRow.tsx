import { useEffect, useState } from 'preact/hooks';
import type { PhotoId } from '../../src/journal/ids.ts';
import { useStore } from '../app/store-context.ts';
import styles from './PhotoRow.module.css';

/** The photographs of an entry, small; each opens whole. */
export function PhotoRow({ photos }: { readonly photos: readonly PhotoId[] }) {
  return (
    <p class={styles.row}>
      {photos.map((id, at) => (
        <Photo key={id} id={id} name={`Photograph ${at + 1}`} />
      ))}
    </p>
  );
}

function Photo({ id, name }: { readonly id: PhotoId; readonly name: string }) {
  const store = useStore();
  const [address, setAddress] = useState<string>();
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    let made: string | undefined;
    let wanted = true;
    store.photo(id).then((blob) => {
      if (!wanted) return;
      if (!blob) return setMissing(true);
      made = URL.createObjectURL(blob);
      setAddress(made);
    });
    return () => {
      wanted = false;
      if (made) URL.revokeObjectURL(made);
    };
  }, [id]);
  if (missing) return <span class={styles.missing}>{name}: not on this device</span>;
  if (!address) return null;
  return (
    <a href={address} target="_blank" rel="noreferrer">
      <img class={styles.photo} src={address} alt={name} />
    </a>
  );
}
