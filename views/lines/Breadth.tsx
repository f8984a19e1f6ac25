import { useEffect } from 'preact/hooks';
import { useStore } from '../app/store-context.ts';
import styles from './Breadth.module.css';
import { breadthWords } from './breadth-words.ts';

/** How narrow the stock is: what the living queens are worth in equal founders and lines, and how akin they are. */
export function Breadth() {
  const store = useStore();
  useEffect(() => store.watchEvaluation(), [store]);
  const state = store.evaluation.value;
  const evaluated = state.is === 'ready' ? state.evaluated : 'before' in state ? state.before : undefined;
  const words = evaluated && breadthWords(evaluated.answer);
  if (!words) return null;
  return (
    <details class={styles.breadth}>
      <summary>{words.summary}</summary>
      {words.details.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </details>
  );
}
