import type { RoughDay } from '../../../src/journal/day.ts';
import type { MarkColour, QueenLossCause } from '../../../src/journal/entries/queen.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import type { QueenId } from '../../../src/journal/ids.ts';
import type { Colony, Queen } from '../../../src/registry/state.ts';
import type { FirstQueenFacts } from '../../yards/first-queen.ts';

export type QueenEvent =
  | 'lays'
  | 'marked'
  | 'named'
  | 'lost'
  | 'another'
  | 'introduced'
  | 'brought-in'
  | 'cells';

/** What has been tapped and written of an event so far; each form asks for its own part. Kept until it is saved. */
export interface Told {
  readonly event?: QueenEvent | undefined;
  readonly queen?: QueenId | undefined;
  readonly day?: RoughDay;
  readonly name?: string;
  readonly seen?: EntryOf<'queen-confirmed'>['seen'] | undefined;
  readonly colour?: MarkColour | undefined;
  readonly number?: string;
  readonly clipped?: 'yes' | 'no' | undefined;
  readonly cause?: QueenLossCause | undefined;
  readonly to?: string;
  readonly how?: EntryOf<'queen-moved'>['how'] | undefined;
  readonly reason?: EntryOf<'queen-expected'>['reason'] | undefined;
  readonly facts?: FirstQueenFacts;
}

export interface QueenEventProps {
  readonly colony: Colony;
  /** The queens of whom the event may be told: the head first, then those expected. */
  readonly queens: readonly Queen[];
  readonly told: Told;
  readonly tell: (change: Told) => void;
  readonly onSaved: () => void;
}

/** The queen meant, of those of whom the event may be told: the one chosen, or the only one. */
export function queenMeant(queens: readonly Queen[], { queen }: Told): Queen | undefined {
  return queens.length === 1 ? queens[0] : queens.find(({ id }) => id === queen);
}
