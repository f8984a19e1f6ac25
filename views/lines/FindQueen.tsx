import { useState } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { FoundQueens } from '../parts/FoundQueens.tsx';
import { findQueens } from '../parts/find-queens.ts';
import styles from './FindQueen.module.css';

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
          <FoundQueens found={found} onPick={({ id }) => choose(id)} />
        </div>
      )}
    </search>
  );
}
