import { localDay, type PlainDay } from '../../src/journal/day.ts';
import { useStore } from '../app/store-context.ts';

/** The day on which something is handed out or taken in: today, in the demo the day on which it plays. */
export function useToday(): PlainDay {
  const { records, on } = useStore();
  return records.value === 'demo' ? on.value : localDay(new Date());
}
