import type { ComponentChildren } from 'preact';
import styles from './MoreFields.module.css';

/** Fields that are seldom needed, opened on demand. */
export function MoreFields({
  label,
  open = false,
  children,
}: {
  readonly label: string;
  /** Open from the beginning, where something in it is asked. */
  readonly open?: boolean;
  readonly children: ComponentChildren;
}) {
  return (
    <details class={styles.more} open={open}>
      <summary>{label}</summary>
      <div class={styles.fields}>{children}</div>
    </details>
  );
}
