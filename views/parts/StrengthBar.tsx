import type { PlainDay } from '../../src/journal/day.ts';
import type { Strength } from './colony-facts.ts';
import { shortDay } from './days.ts';
import styles from './StrengthBar.module.css';
import { number } from './words.ts';

/** Frames of bees that fill the bar. */
const FULL = 20;

/** Frames of bees as last seen, to scale, with the day they were seen. */
export function StrengthBar({
  strength,
  on,
}: {
  readonly strength: Strength | undefined;
  readonly on: PlainDay;
}) {
  if (!strength) return <span class={styles.none}>strength not seen</span>;
  return (
    <span class={styles.strength}>
      <span class={styles.words}>
        <strong>{number(strength.frames)}</strong> {strength.frames === 1 ? 'frame' : 'frames'}
      </span>
      <span class={styles.scale} aria-hidden="true">
        <span
          class={strength.divided ? styles.past : styles.bar}
          style={{ width: `${Math.min(100, (100 * strength.frames) / FULL)}%` }}
        />
      </span>
      <span class={styles.day}>{shortDay(strength.day, on)}</span>
      {strength.divided && <span class={styles.day}>before the split</span>}
    </span>
  );
}
