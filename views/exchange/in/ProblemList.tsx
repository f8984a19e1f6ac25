import { useState } from 'preact/hooks';
import type { Problem } from '../../../src/journal/problems.ts';
import { Button } from '../../parts/Button.tsx';
import styles from './Incoming.module.css';

const SHOWN = 20;

/** Problems one under the other: where, what is wrong, what stands there, what to do. */
export function ProblemList({ problems }: { readonly problems: readonly Problem[] }) {
  const [all, setAll] = useState(false);
  const shown = all ? problems : problems.slice(0, SHOWN);
  return (
    <>
      <ul class={styles.problems}>
        {shown.map((problem) => (
          <li key={`${problem.where} ${problem.field} ${problem.because} ${problem.found}`}>
            <p class={styles.where}>
              {problem.where}
              {problem.field && <span class={styles.field}>, field {problem.field}</span>}
            </p>
            <p>{problem.because}</p>
            <p>
              Found: <span class={styles.found}>{problem.found}</span>
            </p>
            <p>{problem.remedy}</p>
          </li>
        ))}
      </ul>
      {shown.length < problems.length && (
        <div>
          <Button onPress={() => setAll(true)}>Show all {problems.length}</Button>
        </div>
      )}
    </>
  );
}
