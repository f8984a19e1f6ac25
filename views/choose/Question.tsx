import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import styles from './Question.module.css';

export interface QuestionProps {
  readonly title: string;
  /** One line on what stands inside. */
  readonly about: string;
  readonly children: () => ComponentChildren;
}

/** A further question, answered when it is opened. */
export function Question({ title, about, children }: QuestionProps) {
  const [open, setOpen] = useState(false);
  return (
    <details class={styles.question} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
        <span class={styles.about}>{about}</span>
      </summary>
      {open && <div class={styles.inside}>{children()}</div>}
    </details>
  );
}
