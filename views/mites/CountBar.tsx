import styles from './CountBar.module.css';
import type { CountSaid } from './counts.ts';

export interface CountBarProps {
  readonly said: CountSaid;
  /** End of the scale that all bars under one another share. */
  readonly most: number;
}

/**
 * One count to scale: the bar is what it allows, the stroke what was found, the broken lines the keeper's thresholds.
 * A count set aside is hollow. The words beside it say the same.
 */
export function CountBar({ said, most }: CountBarProps) {
  const { figure, thresholds, setAside } = said;
  const at = (value: number) => `${((100 * Math.min(value, most)) / most).toFixed(2)}%`;
  const width = `${((100 * (Math.min(figure.high, most) - Math.min(figure.low, most))) / most).toFixed(2)}%`;
  return (
    <div class={styles.scale} aria-hidden="true">
      <div
        class={`${styles.interval} ${setAside ? styles.aside : ''}`}
        style={{ left: at(figure.low), width }}
      />
      {figure.high > most && <span class={styles.beyond}>›</span>}
      {figure.value > 0 && figure.value <= most && (
        <div class={styles.found} style={{ left: at(figure.value) }} />
      )}
      {thresholds
        .filter(({ value }) => value <= most)
        .map(({ id, value }) => (
          <div key={id} class={styles.threshold} style={{ left: at(value) }} />
        ))}
    </div>
  );
}
