import type { Entry } from '../../journal/entry.ts';
import type { ColonyId } from '../../journal/ids.ts';
import { workersOf } from '../../registry/attribution.ts';
import type { Queen, Registry } from '../../registry/state.ts';
import { recordWords } from './words.ts';

/** A record of a trait that the workers of this queen made, in words. */
export interface TraitRecord {
  readonly day: Entry['day'];
  readonly words: string;
}

/** Records that belong to the queen: those of her colonies from when the workers were hers. In order of day. */
export function traitRecords(registry: Registry, queen: Queen): readonly TraitRecord[] {
  return queen.entries.flatMap((entry) => {
    const words = recordWords(entry);
    const colony = 'colony' in entry ? (entry.colony as ColonyId | undefined) : undefined;
    if (!words || !colony) return [];
    const workers = workersOf(registry, colony, entry.day);
    return workers.known && workers.queen === queen.id ? [{ day: entry.day, words }] : [];
  });
}
