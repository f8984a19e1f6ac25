import styles from './IntervalBar.module.css';

export interface IntervalBarProps {
  readonly label: string;
  readonly low: number;
  readonly high: number;
  /** The estimate itself; absent where only the interval is honest. */
  readonly value?: number | undefined;
  /** Ends of the scale; the same for bars under one another. */
  readonly min?: number;
  readonly max: number;
  /** A line to compare with, such as the threshold that the keeper chose. */
  readonly threshold?: { readonly value: number; readonly label: string } | undefined;
  /** Written after each figure, such as "%". */
  readonly unit?: string;
  readonly digits?: number;
}

/** A figure with its interval, to scale; the words beside it say the same. */
export function IntervalBar({
  label,
  low,
  high,
  value,
  min = 0,
  max,
  threshold,
  unit = '',
  digits = 1,
}: IntervalBarProps) {
  const at = (number: number) =>
    `${(100 * Math.min(1, Math.max(0, (number - min) / (max - min)))).toFixed(2)}%`;
  const say = (number: number) => number.toFixed(digits);
  const space = unit && unit !== '%' ? ' ' : unit ? ' ' : '';
  return (
    <div class={styles.bar}>
      <p class={styles.words}>
        <span>{label}</span>{' '}
        <span>
          {value !== undefined && <strong>{say(value) + space + unit}</strong>}
          <span class={styles.range}>
            {' '}
            {value === undefined && low <= min ? `below ${say(high)}` : `${say(low)} to ${say(high)}`}
            {space}
            {unit}
          </span>
        </span>
      </p>
      <div class={styles.scale} aria-hidden="true">
        <div class={styles.interval} style={{ left: at(low), right: `calc(100% - ${at(high)})` }} />
        {value !== undefined && <div class={styles.value} style={{ left: at(value) }} />}
        {threshold && <div class={styles.threshold} style={{ left: at(threshold.value) }} />}
      </div>
      {threshold && (
        <p class={styles.note}>
          <span class={styles.key} aria-hidden="true" /> {threshold.label}: {threshold.value}
          {space}
          {unit}
        </p>
      )}
    </div>
  );
}
