/**
 * A sensible partition of one colony into 2, 3 or 4 parts: which frames go where, and whose bees are shaken over.
 *
 *   least of  1000 x weak points
 *           + 100 x sum over parts (share of all bees in week `judgedWeek` - wished share)^2
 *           + 0.05 x frames shaken + 0.02 x frames moved off the old stand
 *
 * The old queen goes with the frame she is on into a nucleus off the old stand, unless `queenStays`; the part on
 * the old stand gets the flying bees; each queenless part gets eggs, just hatched larvae or cells. Steepest descent from
 * a deal of the brood in turn: one frame moved, one frame's bees shaken, or two frames exchanged, until nothing helps.
 * Source: common practice for the rules (no source); the figures from population.ts. Cost O(steps x frames^2 x parts x
 * days). The result is good, not proven best; the same input always gives the same plan.
 */
import { BIOLOGY } from '../calendar/biology.ts';
import { type OwnAssumptions, valueIn } from './assumptions.ts';
import { type CombContent, type CombFrame, contentOf, sumContent } from './comb.ts';
import { daysFrom } from './forecast.ts';
import { type PartQueen, type SplitPart, type Stand, settle } from './parts.ts';
import { type Weakness, type WeaknessLimits, weaknessesOf, weakParts } from './weakness.ts';

export interface SplitWish {
  readonly frames: readonly CombFrame[];
  readonly parts: 2 | 3 | 4;
  /** True: the old queen stays on the old stand, and the parts taken off raise queens. */
  readonly queenStays?: boolean;
  /** Parts off the old stand go out of flying range. */
  readonly takenAway?: boolean;
  /** Wished share of the bees of each part in the judged week; equal when absent. */
  readonly shares?: readonly number[];
  readonly limits?: Partial<WeaknessLimits>;
  readonly own?: OwnAssumptions;
}

export const PLAN_DEFAULTS = Object.freeze({ judgedWeek: 6, mostSteps: 60 });

/** Days from the split to the eggs of a queen raised from its brood: 13 to emergence, 12 more to eggs. */
export const DAYS_TO_RAISED_EGGS =
  BIOLOGY.queenEmergence.likely - BIOLOGY.eggHatch.likely + BIOLOGY.firstEggs.likely;

export interface SplitPlan {
  /** Part 0 stands on the old stand. */
  readonly parts: readonly SplitPart[];
  readonly weak: readonly Weakness[];
}

/** Where each frame's comb and each frame's bees go: part numbers, by index of the frame. */
interface Deal {
  readonly comb: readonly number[];
  readonly bees: readonly number[];
}

function roleOf(index: number, wish: SplitWish): { stand: Stand; queen: PartQueen; layingFrom: number } {
  const holdsQueen = wish.queenStays ? index === 0 : index === 1;
  const stand: Stand = index === 0 ? 'old-stand' : wish.takenAway ? 'away' : 'moved';
  return holdsQueen
    ? { stand, queen: 'old-queen', layingFrom: 0 }
    : { stand, queen: 'raises', layingFrom: DAYS_TO_RAISED_EGGS };
}

function partsOf(deal: Deal, wish: SplitWish): readonly SplitPart[] {
  return Array.from({ length: wish.parts }, (_, index) => ({
    ...roleOf(index, wish),
    frames: wish.frames.filter((_, at) => deal.comb[at] === index),
    shakenFrom: wish.frames.filter((_, at) => deal.bees[at] === index && deal.comb[at] !== index),
    shakenOff: wish.frames.filter((_, at) => deal.bees[at] !== index && deal.comb[at] === index),
  }));
}

/** What stays the same while deals are tried. */
interface Trial {
  readonly wish: SplitWish;
  readonly roles: readonly ReturnType<typeof roleOf>[];
  /** Likely content of each frame. */
  readonly contents: readonly CombContent[];
  readonly options: { readonly limits?: Partial<WeaknessLimits>; readonly own?: OwnAssumptions };
}

function trialOf(wish: SplitWish): Trial {
  return {
    wish,
    roles: Array.from({ length: wish.parts }, (_, index) => roleOf(index, wish)),
    contents: wish.frames.map((frame) => contentOf(frame, 'likely', wish.own)),
    options: { ...(wish.limits && { limits: wish.limits }), ...(wish.own && { own: wish.own }) },
  };
}

/** Weak points of the parts under a deal, and the bees of each in the judged week, in the likely case. */
function judge(deal: Deal, { wish, roles, contents, options }: Trial): { weak: number; bees: number[] } {
  const { own } = wish;
  const put = roles.map((_, index) =>
    contents.reduce((sum, { bees }, at) => (deal.bees[at] === index ? sum + bees : sum), 0),
  );
  const stands = roles.map(({ stand }) => stand);
  const lastDay = PLAN_DEFAULTS.judgedWeek * 7;
  let weak = 0;
  const bees = roles.map((role, index) => {
    const frames = wish.frames.filter((_, at) => deal.comb[at] === index);
    const content = sumContent(contents.filter((_, at) => deal.comb[at] === index));
    const settled = settle(stands, put, index, valueIn('foragerShare', 'likely', own));
    const days = daysFrom({ content, bees: settled, layingFrom: role.layingFrom }, 'likely', lastDay, own);
    const figures = { bees: settled.house + settled.foragers, broodDm2: content.broodDm2, days };
    weak += weaknessesOf({ ...role, frames }, index, figures, options).length;
    return days[lastDay]!.bees;
  });
  return { weak, bees };
}

function costOf(deal: Deal, trial: Trial): number {
  const { shares, parts } = trial.wish;
  const { weak, bees } = judge(deal, trial);
  const all = Math.max(
    1,
    bees.reduce((sum, one) => sum + one, 0),
  );
  const uneven = bees.reduce((sum, one, index) => sum + (one / all - (shares?.[index] ?? 1 / parts)) ** 2, 0);
  const shaken = deal.comb.filter((part, at) => part !== deal.bees[at]).length;
  const moved = deal.comb.filter((part) => part !== 0).length;
  return 1000 * weak + 100 * uneven + 0.05 * shaken + 0.02 * moved;
}

function firstDeal({ frames, parts, queenStays }: SplitWish): Deal {
  const brood = ({ openBrood, cappedBrood }: CombFrame): number => openBrood + cappedBrood;
  const order = frames
    .map((frame, at) => ({ frame, at }))
    .sort((a, b) => brood(b.frame) - brood(a.frame) || a.at - b.at);
  const comb = new Array<number>(frames.length).fill(0);
  order.forEach(({ frame, at }, turn) => {
    comb[at] = frame.queen ? (queenStays ? 0 : 1) : turn % parts;
  });
  return { comb, bees: comb };
}

const withPart = (list: readonly number[], at: number, part: number): readonly number[] =>
  list.map((old, index) => (index === at ? part : old));

/** Every deal one step away: a frame moved with its bees, its bees shaken elsewhere, or two frames exchanged. */
function* neighbours(deal: Deal, { frames, parts }: SplitWish): Generator<Deal> {
  for (let at = 0; at < frames.length; at++) {
    if (frames[at]!.queen) continue;
    for (let part = 0; part < parts; part++) {
      if (part !== deal.comb[at]) {
        yield { comb: withPart(deal.comb, at, part), bees: withPart(deal.bees, at, part) };
      }
      if (part !== deal.bees[at]) yield { comb: deal.comb, bees: withPart(deal.bees, at, part) };
    }
    for (let other = at + 1; other < frames.length; other++) {
      if (frames[other]!.queen || deal.comb[at] === deal.comb[other]) continue;
      const [here, there] = [deal.comb[at]!, deal.comb[other]!];
      const exchange = (list: readonly number[]): readonly number[] =>
        withPart(withPart(list, at, there), other, here);
      yield { comb: exchange(deal.comb), bees: exchange(deal.bees) };
    }
  }
}

/**
 * Proposes a partition. Part 0 is the one on the old stand; with `queenStays` it keeps the old queen, otherwise part 1
 * is her nucleus. Weak points that no partition avoids are listed: the colony may be too small for so many parts.
 */
export function planSplit(wish: SplitWish): SplitPlan {
  let deal = firstDeal(wish);
  const trial = trialOf(wish);
  let cost = costOf(deal, trial);
  for (let step = 0; step < PLAN_DEFAULTS.mostSteps; step++) {
    let best: { deal: Deal; cost: number } | undefined;
    for (const next of neighbours(deal, wish)) {
      const nextCost = costOf(next, trial);
      if (nextCost < (best?.cost ?? cost - 1e-9)) best = { deal: next, cost: nextCost };
    }
    if (!best) break;
    ({ deal, cost } = best);
  }
  const parts = partsOf(deal, wish);
  return { parts, weak: weakParts(parts, trial.options) };
}
