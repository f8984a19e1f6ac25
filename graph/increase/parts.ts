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

const GOES_HOME: readonly Stand[] = ['moved', 'beside', 'old-stand'];

/**
 * House bees and foragers of each part when the flying bees have settled, in one case. What leaves fewest bees in a
 * moved part leaves most on the old stand: the share of flying bees is taken at the end that is worse for `of`.
 */
export function settledBees(parts: readonly SplitPart[], of: number, one: Case, own?: OwnAssumptions): Bees {
  const receives = ({ stand }: SplitPart): boolean => stand === 'old-stand' || stand === 'beside';
  const self = parts[of]!;
  const worse: Case = receives(self) || one === 'likely' ? one : one === 'low' ? 'high' : 'low';
  const share = valueIn('foragerShare', worse, own);
  const put = parts.map((part) => contentOfPart(part, one, own).bees);
  const house = put[of]! * (1 - share);
  if (self.stand === 'away') return { house, foragers: put[of]! * share };
  if (!receives(self)) return { house, foragers: 0 };
  const homing = parts.reduce(
    (sum, { stand }, index) => (GOES_HOME.includes(stand) ? sum + put[index]! * share : sum),
    0,
  );
  const onStand = parts.filter(({ stand }) => stand === 'old-stand').length;
  const receivers = onStand > 0 ? onStand : parts.filter(receives).length;
  const mine = onStand > 0 && self.stand !== 'old-stand' ? 0 : homing / receivers;
  return { house, foragers: mine };
}
