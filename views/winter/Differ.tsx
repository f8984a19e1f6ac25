import type { LogRank } from '../../graph/merit/survival/log-rank.ts';
import styles from './Differ.module.css';
import { testFigures, testWords } from './words.ts';

export interface DifferProps {
  readonly test: LogRank | undefined;
  readonly groups: 'lines' | 'yards';
}

/** Whether the groups differ by more than luck, and the figures that say so. */
export function Differ({ test, groups }: DifferProps) {
  if (!test)
    return <p class={styles.answer}>With one of them, or no loss yet, there is nothing to compare.</p>;
  return (
    <div class={styles.differ}>
      <p class={styles.answer}>{testWords(test, groups)}</p>
      <p class={styles.figures}>{testFigures(test)}</p>
    </div>
  );
}
