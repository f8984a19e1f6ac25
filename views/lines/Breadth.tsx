import { useState } from 'preact/hooks';
import { lastEvaluated, useEvaluation } from '../app/use-evaluation.ts';
import styles from './Breadth.module.css';
import { breadthWords } from './breadth-words.ts';
import { GenesKept } from './GenesKept.tsx';

/** How narrow the stock is: what the living queens are worth in equal founders and lines, and how akin they are. */
export function Breadth() {
  const [open, setOpen] = useState(false);
  const evaluated = lastEvaluated(useEvaluation());
  const words = evaluated && breadthWords(evaluated.answer);
  if (!words) return null;
  return (
    <details class={styles.breadth} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words.summary}</summary>
      {words.details.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {open && <GenesKept evaluated={evaluated} />}
    </details>
  );
}
