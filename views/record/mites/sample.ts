import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';

export type Sample = EntryOf<'mite-count'>['sample'];
export type Method = Sample['method'];

/** What has been said of a mite count so far. */
export interface MiteLook {
  readonly method?: Method | undefined;
  readonly mites?: number | undefined;
  readonly bees?: number | undefined;
  readonly days?: number | undefined;
  readonly counted?: 'counted' | 'judged' | undefined;
  readonly day?: RoughDay;
  readonly remark?: string;
}

/** The sample, once enough is said of it. */
export function sampleOf({ method, mites, bees, days, counted }: MiteLook): Sample | undefined {
  if (!method || mites === undefined) return undefined;
  if (method === 'natural-drop') return days ? { method, mites, days } : undefined;
  if (!bees) return undefined;
  return { method, mites, bees, ...(counted ? { beesCounted: counted === 'counted' } : {}) };
}

/** What is still to be said. */
export function missing({ method, mites, bees, days }: MiteLook): string {
  if (!method) return 'Say how the mites were counted.';
  if (method === 'natural-drop' && !days) return 'Enter the days on the board.';
  if (method !== 'natural-drop' && !bees) return 'Enter the bees in the sample.';
  return mites === undefined ? 'Enter the mites; none found is 0.' : '';
}
