import { percents } from '../parts/percents.ts';
import styles from './Origin.module.css';

/** A share (0..1) as a bar to scale and in percent. */
export function ShareBar({ share }: { readonly share: number }) {
  return (
    <span class={styles.share}>
      <span class={styles.bar} style={{ width: `${Math.max(2, 72 * share)}px` }} aria-hidden="true" />
      {percents(share)}
    </span>
  );
}
