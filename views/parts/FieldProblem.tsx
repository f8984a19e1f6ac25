import styles from './FieldProblem.module.css';

/** What is wrong with a field, under it; said aloud when it appears, and what a form scrolls to. */
export function FieldProblem({ children }: { readonly children: string }) {
  return (
    <p class={styles.problem} role="alert">
      {children}
    </p>
  );
}
