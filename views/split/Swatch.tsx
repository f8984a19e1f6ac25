import type { FrameKind } from './plan.ts';
import styles from './Swatch.module.css';

export interface SwatchProps {
  readonly kind: FrameKind;
  /** Frames drawn side by side; halves are drawn as a narrower bar. */
  readonly count?: number;
}

/** Frames seen from above: one bar a frame, its filling by pattern, so that it reads in black and white. */
export function Swatch({ kind, count = 1 }: SwatchProps) {
  const whole = Math.min(12, Math.floor(count));
  const rest = count - Math.floor(count);
  return (
    <span class={styles.frames} aria-hidden="true">
      {Array.from({ length: whole }, (_, index) => (
        <span key={index} class={`${styles.bar} ${styles[kind]}`} />
      ))}
      {rest > 0 && <span class={`${styles.bar} ${styles.part} ${styles[kind]}`} />}
    </span>
  );
}
