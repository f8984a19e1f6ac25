import type { ComponentChildren } from 'preact';
import styles from './Out.module.css';

export interface TickProps {
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
  readonly children: ComponentChildren;
}

/** One thing that may go into the file, or stay at home. */
export function Tick({ value, onChange, children }: TickProps) {
  return (
    <label class={styles.tick}>
      <input type="checkbox" checked={value} onChange={() => onChange(!value)} />
      <span>{children}</span>
    </label>
  );
}
