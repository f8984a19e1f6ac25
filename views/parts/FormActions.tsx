import type { ComponentChildren } from 'preact';
import styles from './FormActions.module.css';

/** The end of a form: its buttons, kept in reach of the thumb at the foot of the screen on a phone. */
export function FormActions({ children }: { readonly children: ComponentChildren }) {
  return <div class={styles.actions}>{children}</div>;
}
