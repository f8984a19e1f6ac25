import type { CombFrame } from '../../../graph/increase/comb.ts';
import type { PartForecast } from '../../../graph/increase/forecast.ts';
import styles from './WeekBars.module.css';
import { framesOfBees, rangeWords } from './words.ts';

export interface WeekBarsProps {
  readonly forecast: PartForecast;
  readonly frames: readonly CombFrame[];
  /** Bees at the end of the scale that all parts share. */
  readonly most: number;
}

/** Bees of a part once the flying ones have gone home, in three and in six weeks, each with its range to scale. */
export function WeekBars({ forecast, frames, most }: WeekBarsProps) {
  const at = (bees: number) => `${(100 * Math.min(1, bees / most)).toFixed(1)}%`;
  return (
    <dl class={styles.weeks}>
      {forecast.weeks.map(({ week, bees }) => (
        <div key={week}>
          <dt>{week === 0 ? 'Once settled' : `In ${week} weeks`}</dt>
          <dd>
            <div class={styles.scale} aria-hidden="true">
              <div class={styles.range} style={{ left: at(bees.low), width: at(bees.high - bees.low) }} />
              <div class={styles.likely} style={{ left: at(bees.likely) }} />
            </div>
            <p>
              <strong>{framesOfBees(bees.likely, frames)}</strong> <span>{rangeWords(bees)} bees</span>
            </p>
          </dd>
        </div>
      ))}
    </dl>
  );
}
