import type { CombFrame } from '../../../graph/increase/comb.ts';
import { forecastPart, type PartForecast } from '../../../graph/increase/forecast.ts';
import type { SplitPart } from '../../../graph/increase/parts.ts';
import { planSplit } from '../../../graph/increase/plan.ts';
import { type Weakness, weakParts } from '../../../graph/increase/weakness.ts';
import type { Wish } from './sketch.ts';

/**
 * A partition as the keeper sees and changes it: for each frame the part its comb goes to and the part its bees go to.
 * Roles (which stand, which queen) stay as proposed.
 */
export interface Deal {
  readonly comb: readonly number[];
  readonly bees: readonly number[];
  readonly roles: readonly Role[];
}

type Role = Pick<SplitPart, 'stand' | 'queen' | 'layingFrom'>;

/** A sensible partition of these frames. */
export function propose(frames: readonly CombFrame[], wish: Wish): Deal {
  const { parts } = planSplit({ frames, ...wish });
  const partOf = (frame: CombFrame) =>
    Math.max(
      0,
      parts.findIndex((part) => part.frames.includes(frame)),
    );
  return {
    comb: frames.map(partOf),
    bees: frames.map((frame) => {
      const shaken = parts.findIndex((part) => part.shakenFrom?.includes(frame));
      return shaken < 0 ? partOf(frame) : shaken;
    }),
    roles: parts.map(({ stand, queen, layingFrom }) => ({
      stand,
      queen,
      ...(layingFrom === undefined ? {} : { layingFrom }),
    })),
  };
}

/** One frame moved on to the next part, with the bees on it. */
export function moveOn(deal: Deal, at: number): Deal {
  const next = ((deal.comb[at] ?? 0) + 1) % deal.roles.length;
  const put = (list: readonly number[]) => list.map((part, index) => (index === at ? next : part));
  return { ...deal, comb: put(deal.comb), bees: put(deal.bees) };
}

export function partsOf(deal: Deal, frames: readonly CombFrame[]): readonly SplitPart[] {
  return deal.roles.map((role, part) => ({
    ...role,
    frames: frames.filter((_, at) => deal.comb[at] === part),
    shakenFrom: frames.filter((_, at) => deal.bees[at] === part && deal.comb[at] !== part),
    shakenOff: frames.filter((_, at) => deal.comb[at] === part && deal.bees[at] !== part),
  }));
}

export interface JudgedPart {
  readonly part: SplitPart;
  readonly forecast: PartForecast;
  readonly weak: readonly Weakness[];
}

/**
 * What each part will have and what is weak in it. Where nobody has said on which frame the queen is, that she is not in
 * her part is no weakness of the plan: she is to be found on the day. Stores that nobody looked at are not none.
 */
export function judged(deal: Deal, frames: readonly CombFrame[], storesKnown = true): readonly JudgedPart[] {
  const parts = partsOf(deal, frames);
  const found = frames.some(({ queen }) => queen);
  const weak = weakParts(parts)
    .filter(({ code }) => found || code !== 'no-queen-found')
    .filter(({ code }) => storesKnown || code !== 'too-little-stores');
  return parts.map((part, index) => ({
    part,
    forecast: forecastPart(parts, index),
    weak: weak.filter((each) => each.part === index),
  }));
}
