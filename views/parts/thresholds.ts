import type { EntryOf } from '../../src/journal/entry.ts';
import type { Settings } from '../../src/store/settings.ts';

type Threshold = Settings['miteThresholds'][number];

/** The threshold that the keeper goes by for a count of this method in this month; none where the keeper set none. */
export function thresholdFor(
  thresholds: readonly Threshold[],
  count: Pick<EntryOf<'mite-count'>, 'day' | 'sample'>,
): Threshold | undefined {
  const month = Number(count.day.slice(5, 7));
  return thresholds.find(({ method, months }) => method === count.sample.method && months.includes(month));
}
