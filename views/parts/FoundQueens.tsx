import type { Queen } from '../../src/registry/state.ts';
import styles from './FoundQueens.module.css';
import type { FoundQueen } from './find-queens.ts';
import { QueenName } from './QueenName.tsx';

const SHOWN = 6;

export interface FoundQueensProps {
  readonly found: readonly FoundQueen[];
  readonly onPick: (queen: Queen) => void;
}

/** The first of the queens found, each to be picked, and what to do when she is not among them. */
export function FoundQueens({ found, onPick }: FoundQueensProps) {
  const more = found.length - SHOWN;
  return (
    <>
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
      <p class={styles.about} role="status">
        {found.length === 0
          ? 'No queen on record fits these words.'
          : more > 0 && `and ${more} more; write more of her name.`}
      </p>
    </>
  );
}
