import styles from './Progress.module.css';

/** How far some work has come: `fraction` from 0 to 1. */
export function Progress({ fraction, label }: { readonly fraction: number; readonly label: string }) {
  return (
    <progress class={styles.progress} max="1" value={fraction} aria-label={label}>
      {Math.round(100 * fraction)} %
    </progress>
  );
}
