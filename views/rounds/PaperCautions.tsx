import { cautionsFor } from '../../graph/calendar/index.ts';
import { dayNumber } from '../../src/journal/day.ts';
import type { YardRound } from '../../src/registry/rounds.ts';
import { useStore } from '../app/store-context.ts';
import { sortTasks } from './grouping.ts';
import styles from './PaperCautions.module.css';

/** On paper the cautions of the day's work stand once, at the foot. */
export function PaperCautions({ rounds }: { readonly rounds: readonly YardRound[] }) {
  const on = dayNumber(useStore().on.value);
  const tasks = rounds.flatMap(({ colonies }) =>
    colonies.flatMap((colony) => {
      const { slipped, now } = sortTasks(colony, on);
      return [...slipped, ...now];
    }),
  );
  const cautions = [...new Set(tasks.flatMap((task) => cautionsFor(task)))];
  return cautions.length === 0 ? null : <p class={styles.cautions}>{cautions.join(' ')}</p>;
}
