import type { ComponentChildren } from 'preact';
import styles from './MoreFields.module.css';

/** Fields that are seldom needed, opened on demand. */
export function MoreFields({
  label,
  children,
}: {
  readonly label: string;
  readonly children: ComponentChildren;
}) {
  return (
    <details class={styles.more}>
      <summary>{label}</summary>
      <div class={styles.fields}>{children}</div>
    </details>
  );
}
