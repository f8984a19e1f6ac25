import type { RoughDay } from '../../src/journal/day.ts';
import type { Draft, EntryOf } from '../../src/journal/entry.ts';
import type { Place } from '../../src/journal/entry-parts.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import type { Yard } from '../../src/registry/state.ts';
import { type FirstQueenFacts, NO_QUEEN } from './first-queen.ts';

export type How = EntryOf<'colony-started'>['how'];
export const HOW: readonly How[] = ['already-here', 'swarm-taken', 'nucleus', 'package', 'bought', 'split'];

/** What is said of a colony that begins. */
export interface Beginning {
  /** Absent until the keeper writes one; then the next number is offered no more. */
  readonly label?: string;
  readonly how?: How | undefined;
  readonly day?: RoughDay;
  readonly queen: FirstQueenFacts;
  readonly from: string;
  readonly place: Place;
}

export const EMPTY: Beginning = { queen: NO_QUEEN, from: '', place: {} };

interface Where {
  readonly label: string;
  readonly day: RoughDay;
  readonly colony: ColonyId;
  readonly yard: Yard;
}

/** The entry that starts the colony. */
export function startOf({ from, place }: Beginning, how: How, { label, day, colony, yard }: Where): Draft {
  return {
    kind: 'colony-started',
    day,
    colony,
    yard: yard.id,
    label,
    how,
    ...(from.trim() ? { from: from.trim() } : {}),
    ...(Object.keys(place).length > 0 ? { place } : {}),
  };
}
