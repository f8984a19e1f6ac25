import { useState } from 'preact/hooks';
import type { Queen } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { TextField } from '../../parts/Field.tsx';
import { FoundQueens } from '../../parts/FoundQueens.tsx';
import { findQueens } from '../../parts/find-queens.ts';
import styles from './QueenPick.module.css';

/** Looks a queen up by name, year, mark number or box; those alive stand first. */
export function QueenPick({ onPick }: { readonly onPick: (queen: Queen) => void }) {
  const { registry, on } = useStore();
  const [text, setText] = useState('');
  const found = findQueens(registry.value, text, on.value);
  return (
    <div class={styles.pick}>
      <TextField
        label="Which queen"
        type="search"
        value={text}
        onChange={setText}
        hint="Her name, year, the number on her back, or the box she heads."
      />
      <div class={styles.found}>
        <FoundQueens found={found} onPick={onPick} />
      </div>
    </div>
  );
}
