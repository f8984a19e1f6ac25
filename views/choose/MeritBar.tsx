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

/** Percent of the width that the word at an end takes, where the axis is narrow. */
const END = 20;

/** The scale above a list of bars. The label of the 0 leans inwards at the ends, and its line always falls under it. */
export function MeritAxis({ scale }: { readonly scale: MeritScale }) {
  const zero = scale.at(0);
  return (
    <span class={styles.frame} aria-hidden="true">
      <span class={styles.axis}>
        <span>{zero > END && 'worse'}</span>
        <span class={styles.stock} style={{ left: `${zero}%`, transform: `translateX(-${zero}%)` }}>
          starting stock
        </span>
        <span>{zero < 100 - END && 'better'}</span>
      </span>
    </span>
  );
}

/** What the bands mean, under a list of bars. */
export function MeritKey() {
  return (
    <p class={styles.key}>
      <span>
        <i class={styles.keyEstimate} aria-hidden="true" /> best estimate
      </span>
      <span>
        <i class={styles.keyLikely} aria-hidden="true" /> truly in here 1 time in 2
      </span>
      <span>
        <i class={styles.keyWide} aria-hidden="true" /> 9 times in 10
      </span>
    </p>
  );
}
