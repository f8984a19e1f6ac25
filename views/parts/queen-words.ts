import { daysBetween, firstDay, lastDay, type PlainDay, type RoughDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import { damCertainty } from '../../src/registry/queries.ts';
import type { Making, Queen, Registry } from '../../src/registry/state.ts';
import { dayInYear, windowText } from '../parts/days.ts';
import { QUEEN_LOSSES } from '../parts/words.ts';

/** A queen's state and origin in words. */

/** A window is told to the day when it is no longer than this; a longer one as its year. */
const TOLD_BY_DAY = 45;

/**
 * "emerged between 18 and 24 May 2023", "emerged in May 2023", "emerged in 2023"; of one who is only awaited "due to emerge between ...".
 * Undefined when nothing is known.
 */
export function bornText({ born, state }: Pick<Queen, 'born' | 'state'>, on: PlainDay): string | undefined {
  if (!born) return undefined;
  const verb =
    state.is === 'expected' ? 'due to emerge' : state.is === 'failed' ? 'was due to emerge' : 'emerged';
  const month = born.first.slice(0, 7);
  if (born.first === firstDay(month as RoughDay) && born.last === lastDay(month as RoughDay))
    return `${verb} in ${dayText(month as RoughDay)}`;
  if (daysBetween(born.first, born.last) <= TOLD_BY_DAY) return `${verb} ${windowText(born, on)}`;
  const sameYear = born.first.slice(0, 4) === born.last.slice(0, 4);
  if (sameYear) return `${verb} in ${born.first.slice(0, 4)}`;
  return `${verb} between ${dayText(born.first)} and ${dayText(born.last)}`;
}

/** What became of a queen who is no more: "superseded, 3 June 2024, deduced". Undefined while she is here. */
export function endText({ state }: Pick<Queen, 'state'>): string | undefined {
  if (state.is === 'failed') return `${QUEEN_LOSSES[state.cause]}, ${dayText(state.day)}`;
  if (state.is !== 'gone') return undefined;
  const to = state.to ? ` to ${state.to}` : '';
  return `${QUEEN_LOSSES[state.cause]}${to}, ${dayText(state.day)}${state.deduced ? ', as deduced' : ''}`;
}

/** How firmly her dam is known, as the heading over the dams says it. */
export function damHeading(queen: Queen): string {
  const certainty = damCertainty(queen);
  if (certainty === 'unknown') return 'Her dam is not known';
  return certainty === 'firm' ? 'Her dam' : 'Her dam, as far as it can be told';
}

const MADE: Readonly<Record<Making['how'], string>> = {
  split: 'Raised in a split',
  cells: 'From cells carried over',
  eggs: 'From a frame of eggs given',
  graft: 'From a graft',
  swarm: 'From swarm cells',
  supersedure: 'By supersedure',
  emergency: 'From emergency cells',
  'brought-in': 'Entered',
};

/** How she came about, as the page of a queen heads it. */
export function madeText({ how }: Making): string {
  return MADE[how];
}

/**
 * "Raised in a split, 10 May": what tells a queen who is only expected from another in the same box, since neither has
 * a name yet. Undefined for one who laid, or of whom no making is on record.
 */
export function comingText({ state, madeBy }: Queen, registry: Registry, on: PlainDay): string | undefined {
  const making = madeBy && registry.makings.get(madeBy);
  return making && state.is === 'expected' ? `${madeText(making)}, ${dayInYear(making.day, on)}` : undefined;
}

/** What is missing to certainty over all possible dams, 0 to 1. */
export function unknownShare(queen: Queen): number {
  const named = (queen.parentage?.dams ?? []).reduce((sum, { probability }) => sum + probability, 0);
  return named > 1 - 1e-9 ? 0 : 1 - named;
}
