/**
 * The parts of a split and the bees each keeps once the flying bees have gone home.
 *
 *   flying bees of a part = foragerShare x bees put in
 *   moved within the yard: they go back to the part on the old stand, or in equal shares to parts beside it
 *   taken away out of flying range: they stay
 *
 * Source: common practice, no source; foragerShare in assumptions.ts. Cost O(parts x frames). Where no part is on or
 * beside the old stand, the flying bees of all moved parts are counted as lost.
 */
import { type Case, type OwnAssumptions, valueIn } from './assumptions.ts';
import { type CombContent, type CombFrame, contentOf, sumContent } from './comb.ts';
import type { Bees } from './population.ts';

/** old-stand: where the colony stood. beside: on either side of it, the place itself empty. moved: elsewhere in the
 * yard. away: out of flying range. */
export type Stand = 'old-stand' | 'beside' | 'moved' | 'away';

/** old-queen: keeps her. raises: from eggs or cells in it. given: gets a laying queen or one about to lay. */
export type PartQueen = 'old-queen' | 'raises' | 'given';

export interface SplitPart {
  readonly frames: readonly CombFrame[];
  /** Frames that stay elsewhere and whose bees are shaken into this part. */
  readonly shakenFrom?: readonly CombFrame[];
  /** Frames in this part whose bees were shaken into another. */
  readonly shakenOff?: readonly CombFrame[];
  readonly stand: Stand;
  readonly queen: PartQueen;
  /** Days from the split until a queen lays here; absent when none is to be counted on. */
  readonly layingFrom?: number;
}

/** Comb and brood of a part, and the bees put into it, in one case. */
export function contentOfPart(part: SplitPart, one: Case, own?: OwnAssumptions): CombContent {
  const combs = sumContent(part.frames.map((frame) => contentOf(frame, one, own)));
  const bees = (frames: readonly CombFrame[] | undefined): number =>
    sumContent((frames ?? []).map((frame) => contentOf(frame, one, own))).bees;
  return { ...combs, bees: Math.max(0, combs.bees + bees(part.shakenFrom) - bees(part.shakenOff)) };
}

const receives = (stand: Stand): boolean => stand === 'old-stand' || stand === 'beside';

/**
 * Bees of one part when the flying bees have settled: `put` bees were put into each part, `share` of them fly.
 */
export function settle(stands: readonly Stand[], put: readonly number[], of: number, share: number): Bees {
  const own = stands[of]!;
  const house = put[of]! * (1 - share);
  if (own === 'away') return { house, foragers: put[of]! * share };
  if (!receives(own)) return { house, foragers: 0 };
  const homing = put.reduce((sum, bees, index) => (stands[index] === 'away' ? sum : sum + bees * share), 0);
  const onStand = stands.filter((stand) => stand === 'old-stand').length;
  if (onStand > 0) return { house, foragers: own === 'old-stand' ? homing / onStand : 0 };
  return { house, foragers: homing / stands.filter(receives).length };
}

/**
 * House bees and foragers of each part when the flying bees have settled, in one case. What leaves fewest bees in a
 * moved part leaves most on the old stand: the share of flying bees is taken at the end that is worse for `of`.
 */
export function settledBees(parts: readonly SplitPart[], of: number, one: Case, own?: OwnAssumptions): Bees {
  const worse: Case = receives(parts[of]!.stand) || one === 'likely' ? one : one === 'low' ? 'high' : 'low';
  const put = parts.map((part) => contentOfPart(part, one, own).bees);
  return settle(
    parts.map(({ stand }) => stand),
    put,
    of,
    valueIn('foragerShare', worse, own),
  );
}
