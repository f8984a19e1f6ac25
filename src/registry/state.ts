import type { PlainDay, RoughDay } from '../journal/day.ts';
import type { LossCause } from '../journal/entries/colony.ts';
import type { MarkColour, QueenLossCause } from '../journal/entries/queen.ts';
import type { Entry, EntryOf } from '../journal/entry.ts';
import type { Parentage, Place } from '../journal/entry-parts.ts';
import type { ColonyId, EntryId, KeeperId, QueenId, YardId } from '../journal/ids.ts';
import type { ContradictionCode } from '../journal/problems.ts';

/**
 * The state of the yards as the journal tells it. Everything here is derived; nothing is edited. Queens, colonies
 * and lines are three things: a colony is the bees in a place and has a label, a queen is an individual with a dam
 * who heads colonies over spans of time, a line is all descent from one founder (see `graph/lineage`).
 *
 * Records are replaced, never changed in place, so a record once read stays as it was.
 */
export interface Registry {
  /** Rises by one with every change; derived figures are kept by it. */
  readonly revision: number;
  readonly yards: ReadonlyMap<YardId, Yard>;
  readonly colonies: ReadonlyMap<ColonyId, Colony>;
  readonly queens: ReadonlyMap<QueenId, Queen>;
  readonly keepers: ReadonlyMap<KeeperId, string>;
  /** Events that made queens, by the first version of their entry. */
  readonly makings: ReadonlyMap<EntryId, Making>;
  /** Treatments by the first version of their entry. */
  readonly treatments: ReadonlyMap<EntryId, TreatmentSpan>;
  /** What the keeper said of the drones, by `droneKey(yard, season)`. */
  readonly droneBackgrounds: ReadonlyMap<string, EntryOf<'drone-background'>>;
  /** Live entries in the order in which they happened. */
  readonly entries: readonly Entry[];
  readonly contradictions: readonly Contradiction[];
}

export interface Yard {
  readonly id: YardId;
  readonly name: string;
  readonly where?: string;
  readonly roundOrder?: number;
  readonly opened: RoughDay;
}

/** A stay of a colony at a yard, from the first day to before the next stay. */
export interface Stay {
  readonly yard: YardId;
  readonly from: RoughDay;
  readonly place?: Place;
}

export interface ColonyEnd {
  readonly day: RoughDay;
  readonly cause: LossCause | 'joined';
  readonly into?: ColonyId;
  readonly entry: EntryId;
}

export interface Colony {
  readonly id: ColonyId;
  /** Label now; earlier ones in `labels`. */
  readonly label: string;
  readonly labels: readonly { readonly label: string; readonly from: RoughDay }[];
  readonly stays: readonly Stay[];
  readonly started: RoughDay;
  readonly how: EntryOf<'colony-started'>['how'];
  /** The colony that it was split from. */
  readonly splitFrom?: ColonyId;
  readonly ended?: ColonyEnd;
  /** Who headed it, in order; the last may be open. Expected queens are in `expected`. */
  readonly tenures: readonly Tenure[];
  /** Queens on their way here now: cells, eggs, virgins. */
  readonly expected: readonly QueenId[];
  /** Every live entry about it, in order. */
  readonly entries: readonly Entry[];
}

/** A span in which a queen headed a colony. `to` absent: still. */
export interface Tenure {
  readonly queen: QueenId;
  readonly colony: ColonyId;
  readonly from: RoughDay;
  /** From this day her eggs are known or taken to be in the combs. */
  readonly layingFrom?: RoughDay;
  readonly to?: RoughDay;
  readonly ended?: 'moved' | 'split' | QueenLossCause;
  /** True when the end is deduced (a new queen was found) and not seen. */
  readonly endDeduced?: boolean;
  /** Where her end went unseen: the last day on which she is known to have been there. From then on it is in doubt. */
  readonly surelyUntil?: PlainDay;
  /** The day on which an unmarked queen was seen where she, who is marked, heads; absent once it is answered who it was. */
  readonly unmarkedSeen?: RoughDay;
}

/** Days between which something happened. */
export interface DayWindow {
  readonly first: PlainDay;
  readonly last: PlainDay;
}

export type QueenState =
  /** Cells, eggs or a virgin: not yet seen laying. */
  | { readonly is: 'expected'; readonly since: RoughDay }
  | { readonly is: 'laying' }
  /** Never laid. */
  | { readonly is: 'failed'; readonly day: RoughDay; readonly cause: QueenLossCause | 'another-came-first' }
  | {
      readonly is: 'gone';
      readonly day: RoughDay;
      readonly cause: QueenLossCause;
      readonly to?: string;
      readonly deduced: boolean;
    }
  /** Taken over from old records or parted from her colony; where she is now is not known. */
  | { readonly is: 'unknown' };

export interface Queen {
  readonly id: QueenId;
  /** The name the keeper gave her. Never derived from a box or a dam. */
  readonly name?: string;
  readonly state: QueenState;
  readonly born?: DayWindow;
  /** Possible dams and how that is known; absent when nothing is known. */
  readonly parentage?: Parentage;
  /**
   * Whose own brood hung in the colony when the cells were given there that she is expected of: she may be a daughter of
   * hers instead. Absent once the keeper has stated her dam on her own.
   */
  readonly orDaughterOf?: QueenId;
  /** The population that she or her unknown dam comes from. */
  readonly background?: string;
  readonly madeBy?: EntryId;
  readonly from?: string;
  readonly mating?: EntryOf<'mating'>;
  readonly mark?: { readonly colour: MarkColour; readonly number?: string; readonly since: RoughDay };
  readonly tenures: readonly Tenure[];
  /** The colony that she is expected in, while expected. */
  readonly expectedIn?: ColonyId;
  readonly daughters: readonly QueenId[];
  readonly entries: readonly Entry[];
}

export type MakingHow =
  | 'split'
  | 'cells'
  | 'eggs'
  | 'graft'
  | 'swarm'
  | 'supersedure'
  | 'emergency'
  | 'brought-in';

/** An event that made queens: a split, a frame of cells, cells found. */
export interface Making {
  readonly id: EntryId;
  readonly how: MakingHow;
  readonly day: RoughDay;
  readonly colony?: ColonyId;
  readonly queens: readonly QueenId[];
}

export interface TreatmentSpan {
  readonly id: EntryId;
  readonly entry: EntryOf<'treatment'>;
  readonly colonies: readonly ColonyId[];
  readonly from: RoughDay;
  /** Last day it acted; absent while it is still in or the end was not written down. */
  readonly to?: RoughDay;
}

/** Where entries contradict one another. Overruled ones stay visible with their reason. */
export interface Contradiction {
  readonly code: ContradictionCode;
  readonly entry: EntryId;
  readonly day: RoughDay;
  readonly colony?: ColonyId;
  readonly queen?: QueenId;
  readonly found: string;
  readonly because: string;
  /** What would put it right, as sentences the keeper can choose from. */
  readonly remedies: readonly string[];
  readonly overruled?: string;
}

/** Key of a yard and season in `droneBackgrounds` and of its drone pool. */
export function droneKey(yard: YardId, season: number): string {
  return `${yard}/${season}`;
}
