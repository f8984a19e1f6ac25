import { type StateCode, stateText } from '../../graph/calendar/index.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import { type HeadState, headState } from '../../src/registry/queries.ts';
import { colonyCalendar } from '../../src/registry/rounds.ts';
import type { Colony, Queen, Registry } from '../../src/registry/state.ts';
import { count } from './words.ts';

/** Who is on her way in a colony, as far as what was seen there leaves hope for her. */

/** States in which no queen made here is on her way, whoever is still expected by the records. */
export const NOBODY_COMES: ReadonlySet<StateCode> = new Set([
  'queenless',
  'laying-workers',
  'drone-layer',
  'old-queen',
]);

/** The queens expected here by the records. */
export function expectedQueens(colony: Colony, registry: Registry): readonly Queen[] {
  return colony.expected.flatMap((id) => registry.queens.get(id) ?? []);
}

/** "Likely: no queen, and none on the way.": what the calendar says instead of a queen to come; nothing while one may. */
export function inVainText(registry: Registry, colony: Colony, on: PlainDay): string | undefined {
  if (colony.expected.length === 0) return undefined;
  const state = colonyCalendar(registry, colony, on)?.calendar.state;
  return state && NOBODY_COMES.has(state.code) ? stateText(state) : undefined;
}

/** What a colony is said to wait for while nobody heads it; nothing where it waits for nobody. */
export function waitingText(registry: Registry, colony: Colony, on: PlainDay): string | undefined {
  if (colony.expected.length === 0) return undefined;
  // What the calendar says instead stands under "Next": one of the two, never both.
  if (inVainText(registry, colony, on)) return 'No queen is known to lay here.';
  return `No queen lays here yet; ${count(colony.expected.length, 'queen is', 'queens are')} expected.`;
}

/** How a colony is headed, as its mark shows it: expected only while a queen may be on her way. */
export function shownHead(registry: Registry, colony: Colony, on: PlainDay): HeadState {
  const state = headState(registry, colony, on);
  return state === 'expected' && inVainText(registry, colony, on) ? 'nobody-known' : state;
}
