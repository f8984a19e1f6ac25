import { useState } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { findQueens } from '../parts/find-queens.ts';
import { QueenName } from '../parts/QueenName.tsx';
import styles from './FindQueen.module.css';

const SHOWN = 6;

/** Finds a queen by her name, year, mark or box, and chooses her; Enter takes the first found. */
export function FindQueen({ onChoose }: { readonly onChoose: (queen: QueenId) => void }) {
  const registry = useRegistry();
  const { on } = useStore();
  const [text, setText] = useState('');
  const found = text.trim() === '' ? undefined : findQueens(registry, text, on.value);
  const choose = (queen: QueenId | undefined) => {
    if (!queen) return;
    setText('');
    onChoose(queen);
  };
  return (
    <search class={styles.find}>
      <label class={styles.label}>
        Find a queen
        <input
          type="search"
          autocomplete="off"
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') choose(found?.[0]?.queen.id);
            if (event.key === 'Escape') setText('');
          }}
        />
      </label>
      {found && (
        <div class={styles.found}>
          <ul aria-label="Queens found">
            {found.slice(0, SHOWN).map(({ queen, about }) => (
              <li key={queen.id}>
                <button type="button" onClick={() => choose(queen.id)}>
                  <QueenName queen={queen} plain />
                  <span class={styles.about}>{about}</span>
                </button>
              </li>
            ))}
          </ul>
          <p class={styles.about} role="status">
            {found.length === 0
              ? 'No queen on record fits these words.'
              : found.length > SHOWN && `and ${found.length - SHOWN} more; write more of her name.`}
          </p>
        </div>
      )}
    </search>
  );
}
