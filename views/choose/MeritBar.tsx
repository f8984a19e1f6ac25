import styles from './MeritBar.module.css';
import { HALF, type MeritScale, NINE_TENTHS } from './merit-scale.ts';

export interface MeritBarProps {
  readonly merit: number;
  readonly error: number;
  readonly scale: MeritScale;
}

/** A merit with its doubt, on the one scale of the list: a line for the estimate, bands for 1 in 2 and 9 in 10. */
export function MeritBar({ merit, error, scale }: MeritBarProps) {
  const band = (errors: number) => {
    const low = scale.at(merit - errors * error);
    return { left: `${low}%`, width: `${scale.at(merit + errors * error) - low}%` };
  };
  return (
    <span class={styles.bar} aria-hidden="true">
      <span class={styles.zero} style={{ left: `${scale.at(0)}%` }} />
      <span class={styles.wide} style={band(NINE_TENTHS)} />
      <span class={styles.likely} style={band(HALF)} />
      <span class={styles.estimate} style={{ left: `${scale.at(merit)}%` }} />
    </span>
  );
}

/** The scale above a list of bars. */
export function MeritAxis({ scale }: { readonly scale: MeritScale }) {
  return (
    <span class={styles.axis} aria-hidden="true">
      <span class={styles.worse}>worse</span>
      <span class={styles.stock} style={{ left: `${scale.at(0)}%` }}>
        starting stock
      </span>
      <span class={styles.better}>better</span>
    </span>
  );
}

/** What the bands mean, under a list of bars. */
export function MeritKey() {
  return (
    <p class={styles.key}>
      <span class={styles.keyEstimate} aria-hidden="true" /> best estimate
      <span class={styles.keyLikely} aria-hidden="true" /> truly in here 1 time in 2
      <span class={styles.keyWide} aria-hidden="true" /> 9 times in 10
    </p>
  );
}
