/**
 * How a colony comes by its next queen, and what that says about her days.
 *
 *   made queenless on day D, brood left:  laid <= D,  hatched >= D - oldestLarva.latest
 *   graft of larvae aged a..b on day D:   D - b <= hatched <= D - a
 *   capped cells given on day D:          capped <= D <= emerged
 *   virgin given on day D:                emerged <= D
 *   mated queen given on day D:           D + earliest <= laying <= D + latest
 *
 * Sources: biology.ts. Cost O(1). What the keeper does not know (age of cells, day a virgin emerged) is left
 * open within the widest range that the table allows.
 */
import { BIOLOGY, type Day } from './biology.ts';
import { by, type EventName, notBefore } from './events.ts';
import type { Bound } from './network.ts';

/** Age of queen cells as the keeper judges it. */
export type CellAge = 'open' | 'capped' | 'emerging' | 'unknown';

/** What queens can be raised from: eggs, just hatched larvae, both, or not known which. */
export type BroodLeft = 'eggs' | 'young-brood' | 'both';

interface MakingBase {
  readonly day: Day;
  /**
   * Last day on which another queen laid in this colony, or eggs of another were brought in; absent: no later
   * than `day`. Eggs seen soon after it need not be the new queen's.
   */
  readonly eggsUntil?: Day;
}

export type Making = MakingBase &
  (
    | { readonly kind: 'made-queenless'; readonly left?: BroodLeft }
    | { readonly kind: 'brood-given'; readonly left?: BroodLeft }
    | { readonly kind: 'cells-given'; readonly age: CellAge; readonly eggsLaid?: Day }
    | { readonly kind: 'cells-left'; readonly age: CellAge; readonly eggsLaid?: Day }
    | { readonly kind: 'graft'; readonly larvaAgeFrom: number; readonly larvaAgeTo: number }
    | { readonly kind: 'virgin-given'; readonly emerged?: Day }
    | { readonly kind: 'mated-queen-given'; readonly caged: boolean }
  );

export type MakingKind = Making['kind'];

/** What one making says about the days, before anything is seen. */
export interface MakingModel {
  readonly bounds: readonly Bound[];
  /** The first event that this making dates; earlier ones are not shown. */
  readonly firstEvent: EventName;
  /** The likely day of that event. */
  readonly likelyFirst: Day;
  /** False for a queen given as a virgin or mated: cells then have no place. */
  readonly hasCells: boolean;
  /** True where cells or a queen came from elsewhere on that day. */
  readonly broughtIn: boolean;
  readonly day: Day;
  readonly eggsUntil: Day;
  /** Last day on which an egg that becomes one of these cells can have been laid. */
  readonly lastCellEgg: Day;
}

function fromBrood(day: Day, left: BroodLeft | undefined): { bounds: Bound[]; likelyFirst: Day } {
  const bounds = [by('laid', day), notBefore('hatched', day - BIOLOGY.oldestLarva.latest)];
  if (left === 'eggs') return { bounds: [...bounds, notBefore('hatched', day)], likelyFirst: day - 2 };
  if (left === 'young-brood') return { bounds: [...bounds, by('hatched', day)], likelyFirst: day - 4 };
  return { bounds, likelyFirst: day - 3 };
}

function fromCells(day: Day, age: CellAge, eggsLaid: Day | undefined): { bounds: Bound[]; likelyFirst: Day } {
  const notOut = [by('laid', day), notBefore('emerged', day)];
  if (eggsLaid !== undefined) {
    return { bounds: [...notOut, by('laid', eggsLaid), notBefore('laid', eggsLaid)], likelyFirst: eggsLaid };
  }
  if (age === 'open') return { bounds: [...notOut, notBefore('capped', day)], likelyFirst: day - 6 };
  if (age === 'capped') return { bounds: [...notOut, by('capped', day)], likelyFirst: day - 11 };
  if (age === 'emerging') {
    const soon = by('emerged', day + 3);
    return { bounds: [...notOut, by('capped', day), soon], likelyFirst: day - 15 };
  }
  return { bounds: notOut, likelyFirst: day - 9 };
}

function fromGraft(day: Day, ageFrom: number, ageTo: number): { bounds: Bound[]; likelyFirst: Day } {
  const oldest = Math.ceil(Math.max(ageFrom, ageTo));
  const youngest = Math.floor(Math.min(ageFrom, ageTo));
  const middle = Math.round((ageFrom + ageTo) / 2);
  return {
    bounds: [notBefore('hatched', day - oldest), by('hatched', day - youngest)],
    likelyFirst: day - middle - BIOLOGY.eggHatch.likely,
  };
}

function datedFromEgg(
  making: Making,
): { readonly bounds: readonly Bound[]; readonly likelyFirst: Day } | undefined {
  switch (making.kind) {
    case 'made-queenless':
    case 'brood-given':
      return fromBrood(making.day, making.left);
    case 'cells-given':
    case 'cells-left':
      return fromCells(making.day, making.age, making.eggsLaid);
    case 'graft':
      return fromGraft(making.day, making.larvaAgeFrom, making.larvaAgeTo);
    default:
      return undefined;
  }
}

/** The bounds and the likely first day that a making gives. Days; never fails. */
export function makingModel(making: Making): MakingModel {
  const { day } = making;
  const broughtIn = !['made-queenless', 'brood-given', 'cells-left'].includes(making.kind);
  const shared = { day, eggsUntil: making.eggsUntil ?? day, lastCellEgg: day, broughtIn };
  const egg = datedFromEgg(making);
  if (egg) return { ...shared, ...egg, firstEvent: 'laid', hasCells: true };
  if (making.kind === 'virgin-given') {
    const { earliest, likely, latest } = BIOLOGY.virginAge;
    const known = making.emerged;
    const bounds = [by('emerged', known ?? day - earliest), notBefore('emerged', known ?? day - latest)];
    return { ...shared, bounds, firstEvent: 'emerged', likelyFirst: known ?? day - likely, hasCells: false };
  }
  const lays =
    BIOLOGY[making.kind === 'mated-queen-given' && making.caged ? 'cagedQueenLays' : 'freeQueenLays'];
  const bounds = [notBefore('laying', day + lays.earliest), by('laying', day + lays.latest)];
  return { ...shared, bounds, firstEvent: 'laying', likelyFirst: day + lays.likely, hasCells: false };
}

/** True when the colony raises her itself and cells are to be looked for. */
export function raisesCells(making: Making): boolean {
  return making.kind === 'made-queenless' || making.kind === 'brood-given' || making.kind === 'graft';
}

/** Bounds of the same making had the cells been begun before it: they were getting ready to swarm. */
export function olderCellBounds(day: Day): readonly Bound[] {
  return [by('laid', day), notBefore('emerged', day)];
}
