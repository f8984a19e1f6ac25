/**
 * One history of a colony: a making taken at its word, with the network of its biology and what sights can mean in
 * it. Another reading of the same record (older cells, a later virgin) is the same with some of it replaced.
 *
 *   network = biology from the first dated event onward + bounds of the making
 *
 * Sources: biology.ts, making.ts. Cost O(n^3) for n about ten events.
 */
import type { Day } from './biology.ts';
import { biologyBounds, type EventName, type Lengths, VARIABLE, VARIABLES } from './events.ts';
import { type Making, type MakingModel, makingModel } from './making.ts';
import { type Bound, emptyNetwork, type Network, tighten } from './network.ts';
import type { Observation, SeenField } from './observation.ts';
import { solve, type Windows } from './solve.ts';
import { type HistoryContext, type Statement, statementsOf } from './statements.ts';

export interface History {
  readonly context: HistoryContext;
  readonly network: Network;
}

/** Network of the biology from `firstEvent` on with these bounds; they must not contradict the table. */
export function networkOf(firstEvent: EventName, bounds: readonly Bound[], lengths?: Lengths): Network {
  const network = emptyNetwork(VARIABLES);
  for (const bound of [...biologyBounds(firstEvent, lengths), ...bounds]) {
    if (!tighten(network, bound)) {
      throw new Error(`The bounds of a making contradict the biology table at ${JSON.stringify(bound)}.`);
    }
  }
  return network;
}

/** The history in which the making of this index is the one that gives the queen. */
export function historyOf(makings: readonly Making[], index: number, model?: MakingModel): History {
  const models = makings.map(makingModel);
  const own = model ?? models[index]!;
  const context: HistoryContext = {
    model: own,
    otherEggs: models.map(({ day, eggsUntil }) => ({ from: day, until: eggsUntil })),
    otherCells: makings
      .filter((_, at) => at !== index && models[at]!.hasCells)
      .map(({ day, kind }) => ({ from: day, onBroodGiven: kind === 'brood-given' })),
  };
  return { context, network: networkOf(own.firstEvent, own.bounds) };
}

/** Statements of all observations about this history, without the fields named. */
export function statementsAbout(
  history: History,
  observations: readonly Observation[],
  without: readonly SeenField[] = [],
): readonly Statement[] {
  return observations
    .flatMap((seen) => statementsOf(history.context, seen))
    .filter(({ field }) => !without.includes(field));
}

/** Windows of this history under these statements; undefined when they do not agree. */
export function windowsOf(history: History, statements: readonly Statement[]): Windows | undefined {
  const { firstEvent, likelyFirst } = history.context.model;
  return solve(history.network, statements, { firstEvent, likelyFirst });
}

const HER_BROOD: readonly SeenField[] = ['eggs', 'youngBrood', 'openBrood', 'cappedWorkerBrood'];

/** True of a sight that, in this history, only a laying queen of its own explains. */
export function showsHerLaying({ field, found, anyOf }: Statement): boolean {
  if (!found || anyOf.length === 0) return false;
  return HER_BROOD.includes(field) || (field === 'queen' && onlyLaying(anyOf));
}

function onlyLaying(anyOf: Statement['anyOf']): boolean {
  // A virgin or an unmarked queen also dates the emergence; a laying one dates the first eggs alone.
  return anyOf.length === 1 && anyOf[0]!.length === 1 && anyOf[0]![0]!.to === VARIABLE.laying;
}

/** A history that agrees with what was seen: its windows, and the first sight of her own brood. */
export interface Outcome {
  readonly windows: Windows;
  readonly hersSince?: Day;
}

/** Windows of this history under these statements with the first day that shows her laying. */
export function outcomeOf(history: History, statements: readonly Statement[]): Outcome | undefined {
  const windows = windowsOf(history, statements);
  const hers = statements.find(showsHerLaying);
  return windows && { windows, ...(hers && { hersSince: hers.day }) };
}
