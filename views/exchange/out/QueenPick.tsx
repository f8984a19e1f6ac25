import { useState } from 'preact/hooks';
import type { Queen } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { TextField } from '../../parts/Field.tsx';
import { findQueens } from '../../parts/find-queens.ts';
import { QueenName } from '../../parts/QueenName.tsx';
import styles from './QueenPick.module.css';

const SHOWN = 6;

/** Looks a queen up by name, year, mark number or box; those alive stand first. */
export function QueenPick({ onPick }: { readonly onPick: (queen: Queen) => void }) {
  const { registry, on } = useStore();
  const [text, setText] = useState('');
  const found = findQueens(registry.value, text, on.value);
  const more = found.length - SHOWN;
  return (
    <div class={styles.pick}>
      <TextField
        label="Which queen"
        type="search"
        value={text}
        onChange={setText}
        hint="Her name, year, the number on her back, or the box she heads."
      />
      <ul class={styles.found} aria-label="Queens found">
        {found.slice(0, SHOWN).map(({ queen, about }) => (
          <li key={queen.id}>
            <button type="button" onClick={() => onPick(queen)}>
              <QueenName queen={queen} plain />
              <span class={styles.about}>{about}</span>
            </button>
          </li>
        ))}
      </ul>
      {found.length === 0 && <p>No queen on record fits these words.</p>}
      {more > 0 && <p class={styles.about}>and {more} more; write more of her name.</p>}
    </div>
  );
}
