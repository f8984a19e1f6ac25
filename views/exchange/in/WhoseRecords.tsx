import { useId } from 'preact/hooks';
import styles from './WhoseRecords.module.css';

export interface WhoseRecordsProps {
  /** The name in the file; empty where none was given. */
  readonly name: string;
  readonly value: 'mine' | 'theirs' | undefined;
  readonly onChange: (value: 'mine' | 'theirs') => void;
  readonly problem?: string | undefined;
}

/** Asks whether the keeper of the file is the keeper at the screen: only they can say. */
export function WhoseRecords({ name, value, onChange, problem }: WhoseRecordsProps) {
  const id = useId();
  const called = name || 'the keeper of this file';
  const answers = [
    {
      value: 'mine',
      words: 'Mine: a backup, or from another device of mine',
      after: `What you write here goes on as written by ${called}.`,
    },
    {
      value: 'theirs',
      words: 'Of another keeper',
      after: `You write under your own name, beside ${called}.`,
    },
  ] as const;
  return (
    <fieldset class={styles.whose} aria-describedby={problem ? `${id}-problem` : undefined}>
      <legend>Whose records are these?</legend>
      {answers.map((answer) => (
        <label key={answer.value}>
          <input
            type="radio"
            name={id}
            checked={answer.value === value}
            onChange={() => onChange(answer.value)}
          />
          <span>
            {answer.words}
            <small>{answer.after}</small>
          </span>
        </label>
      ))}
      {problem && (
        <p id={`${id}-problem`} class={styles.problem} role="alert">
          {problem}
        </p>
      )}
    </fieldset>
  );
}
