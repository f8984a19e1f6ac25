import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import styles from './Question.module.css';

export interface QuestionProps {
  readonly title: string;
  /** The answer in a line, or what stands inside. */
  readonly about: ComponentChildren;
  /** At a desk it stands open from the start; on a phone every question waits for its tap. */
  readonly openAtDesk?: boolean;
  readonly children: () => ComponentChildren;
}

/** A further question with its answer in a line; all of it when it is opened. */
export function Question({ title, about, openAtDesk = false, children }: QuestionProps) {
  const [open, setOpen] = useState(() => openAtDesk && window.matchMedia('(min-width: 60rem)').matches);
  return (
    <details class={styles.question} open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
        <span class={styles.about}>{about}</span>
      </summary>
      {open && <div class={styles.inside}>{children()}</div>}
    </details>
  );
}
