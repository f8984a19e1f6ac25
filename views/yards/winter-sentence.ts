import type { PlainDay } from '../../src/journal/day.ts';
import { yardOn } from '../../src/registry/queries.ts';
import type { Registry, Yard } from '../../src/registry/state.ts';
import { winterText } from '../parts/words.ts';

/** "4 of 5 came through winter 2025/26", from the outcomes written down; nothing where there is none. */
export function winterSentence(registry: Registry, yard: Yard, winter: number): string | undefined {
  const midwinter = `${winter}-01-15` as PlainDay;
  let alive = 0;
  let all = 0;
  for (const colony of registry.colonies.values()) {
    if (yardOn(colony, midwinter) !== yard.id) continue;
    const outcome = colony.entries.findLast(
      (entry) => entry.kind === 'winter-outcome' && entry.winter === winter,
    );
    if (outcome?.kind !== 'winter-outcome') continue;
    all += 1;
    if (outcome.alive) alive += 1;
  }
  return all === 0 ? undefined : `${alive} of ${all} came through ${winterText(winter)}`;
}
