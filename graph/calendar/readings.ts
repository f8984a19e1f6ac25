/**
 * Other readings of a record that what was seen contradicts: which of the things that do happen would explain
 * everything seen. Each reading is a history of its own; it is offered only if it agrees with every sight.
 *
 *   cells-older        laid <= D, emerged >= D: they were getting ready to swarm or to replace her before
 *   queen-overlooked   no queen is raised; a laying queen was there all the time
 *   first-virgin-left  the first to emerge left with a swarm; a later cell heads the colony: cells say nothing
 *   replaced-since     she laid, and cells were begun again: supersedure, or they get ready to swarm
 *   not-accepted       a queen given was not taken; the colony raises its own
 *   late-start         first eggs up to `LATE` days after emergence
 *   drone-layer        she lays, unmated or poorly mated
 *   laying-workers     no queen for `layingWorkers.earliest` days or more
 *   gone-since         she laid and is gone;  lost: she never came to lay
 *
 * Sources: biology.ts; that colonies left with many cells often swarm with the first virgin: Punnett & Winston
 * 1983, Insectes Sociaux 30:376 (abstract: six of eight). Cost that of `solve` a reading.
 */
import { BIOLOGY, type Day } from './biology.ts';
import { by, type Lengths } from './events.ts';
import {
  type History,
  historyOf,
  networkOf,
  type Outcome,
  outcomeOf,
  showsHerLaying,
  statementsAbout,
  windowsOf,
} from './history.ts';
import { type Making, makingModel, olderCellBounds } from './making.ts';
import type { Observation, SeenField } from './observation.ts';
import type { Statement } from './statements.ts';

export type ReadingCode =
  | 'as-recorded'
  | 'cells-older'
  | 'queen-overlooked'
  | 'first-virgin-left'
  | 'replaced-since'
  | 'not-accepted'
  | 'late-start'
  | 'drone-layer'
  | 'laying-workers'
  | 'gone-since'
  | 'lost';

/** The record as it stands: makings, the one read, and what was seen, in order of day. */
export interface ReadingInput {
  readonly makings: readonly Making[];
  readonly index: number;
  readonly observations: readonly Observation[];
}

/** What a reading gives (no windows where no new queen is awaited), or undefined when it does not agree. */
type Reading = (input: ReadingInput) => Outcome | undefined;

const NO_QUEEN_AWAITED: Outcome = { windows: {} };

const CELL_SIGHTS: readonly SeenField[] = ['cappedCells', 'openCells', 'emergedCells', 'tornCells'];
/** Days after emergence at which first eggs are still taken for hers when nothing else explains them. */
const LATE = 42;

const recorded = ({ makings, index }: ReadingInput): History => historyOf(makings, index);
const dayOf = ({ makings, index }: ReadingInput): Day => makings[index]!.day;
const since = (input: ReadingInput): readonly Observation[] =>
  input.observations.filter(({ day }) => day >= dayOf(input));

const cellsOlder: Reading = (input) => {
  const making = input.makings[input.index]!;
  const model = makingModel(making);
  if (!model.hasCells) return undefined;
  const older = { ...model, bounds: olderCellBounds(making.day), likelyFirst: making.day - 8 };
  const history = historyOf(input.makings, input.index, older);
  return outcomeOf(history, statementsAbout(history, input.observations));
};

const queenOverlooked: Reading = (input) => {
  const seen = since(input);
  const broodless = seen.some(
    ({ eggs, youngBrood, openBrood, day }) =>
      day > dayOf(input) && (eggs === false || youngBrood === false || openBrood === false),
  );
  const otherQueen = seen.some(({ queen }) => queen !== undefined && queen !== 'old');
  const failing = seen.some(({ severalEggsInCells, droneBroodOnly }) => severalEggsInCells || droneBroodOnly);
  if (broodless || otherQueen || failing) return undefined;
  const history = recorded(input);
  const statements = statementsAbout(history, input.observations);
  const sheWasThere = statements.some(showsHerLaying) || seen.some(({ queen }) => queen === 'old');
  const cells = statements.filter(({ field }) => CELL_SIGHTS.includes(field));
  return sheWasThere && windowsOf(history, cells) ? NO_QUEEN_AWAITED : undefined;
};

const firstVirginLeft: Reading = (input) => {
  const history = recorded(input);
  if (!history.context.model.hasCells) return undefined;
  const statements = statementsAbout(history, input.observations);
  const cells = statements.filter(({ field }) => CELL_SIGHTS.includes(field));
  const others = statements.filter(({ field }) => !CELL_SIGHTS.includes(field));
  return windowsOf(history, cells) && outcomeOf(history, others);
};

function cellsFrom(input: ReadingInput, first: Observation): Outcome | undefined {
  const age = first.cappedCells ? 'capped' : first.openCells ? 'open' : 'unknown';
  // Eggs of the queen before may be about until a daughter can have emerged from these cells.
  const eggsUntil = first.day + BIOLOGY.queenEmergence.latest;
  const making: Making = { kind: 'cells-left', day: first.day, age, eggsUntil };
  const history = historyOf([making], 0);
  return outcomeOf(history, statementsAbout(history, input.observations));
}

const replacedSince: Reading = (input) => {
  const history = recorded(input);
  const laying = statementsAbout(history, input.observations).find(showsHerLaying);
  if (!laying) return undefined;
  const cells = input.observations.find(
    ({ day, openCells, cappedCells }) => day > laying.day && (openCells || cappedCells),
  );
  if (!cells) return undefined;
  const before = input.observations.filter(({ day }) => day < cells.day);
  return outcomeOf(history, statementsAbout(history, before)) && cellsFrom(input, cells);
};

const notAccepted: Reading = (input) => {
  if (recorded(input).context.model.hasCells) return undefined;
  const cells = since(input).find(({ openCells, cappedCells }) => openCells || cappedCells);
  return cells && cellsFrom(input, cells);
};

/** Lengths of a queen whom weather or lack of drones kept from mating for weeks. */
const LATE_LENGTHS: Lengths = {
  ...BIOLOGY,
  matingFlight: { ...BIOLOGY.matingFlight, latest: LATE - BIOLOGY.flightToEggs.earliest },
  firstEggs: { ...BIOLOGY.firstEggs, latest: LATE },
};

const lateStart: Reading = (input) => {
  const history = recorded(input);
  const { model } = history.context;
  if (model.firstEvent === 'laying') return undefined;
  const network = networkOf(model.firstEvent, model.bounds, LATE_LENGTHS);
  return outcomeOf({ ...history, network }, statementsAbout(history, input.observations));
};

const droneLayer: Reading = (input) => {
  const failing = since(input).find(({ droneBroodOnly }) => droneBroodOnly);
  if (!failing) return undefined;
  const history = recorded(input);
  const statements = statementsAbout(history, input.observations, ['droneBroodOnly', 'severalEggsInCells']);
  const laying = {
    day: failing.day,
    field: 'eggs' as const,
    found: true,
    anyOf: [[by('laying', failing.day)]],
  };
  const outcome = outcomeOf(history, [...statements, laying]);
  return outcome && { windows: outcome.windows };
};

const layingWorkers: Reading = (input) => {
  const seen = since(input);
  const sign = seen.find(({ severalEggsInCells, droneBroodOnly }) => severalEggsInCells || droneBroodOnly);
  if (!sign || sign.day < dayOf(input) + BIOLOGY.layingWorkers.earliest) return undefined;
  const history = recorded(input);
  const hers = statementsAbout(history, input.observations).some(
    (statement) =>
      showsHerLaying(statement) && (statement.field === 'cappedWorkerBrood' || statement.field === 'queen'),
  );
  return hers ? undefined : NO_QUEEN_AWAITED;
};

/** What a queen who fails leaves unseen: brood that should be there, cells gone before their time. */
function foundOnly(statements: readonly Statement[]): readonly Statement[] {
  return statements.filter(({ found }) => found);
}

const goneSince: Reading = (input) => {
  const history = recorded(input);
  const statements = statementsAbout(history, input.observations);
  const laying = statements.find(showsHerLaying);
  const last = statements.filter(({ field }) => field === 'eggs' || field === 'openBrood').at(-1);
  if (!laying || !last || last.found || last.day <= laying.day) return undefined;
  return windowsOf(history, foundOnly(statements)) ? NO_QUEEN_AWAITED : undefined;
};

const lost: Reading = (input) => {
  const history = recorded(input);
  const statements = statementsAbout(history, input.observations);
  if (statements.some(showsHerLaying)) return undefined;
  return windowsOf(history, foundOnly(statements)) ? NO_QUEEN_AWAITED : undefined;
};

/** All readings but the record itself, in the order in which they are thought of when nothing else decides. */
export const READINGS: readonly (readonly [Exclude<ReadingCode, 'as-recorded'>, Reading])[] = [
  ['cells-older', cellsOlder],
  ['queen-overlooked', queenOverlooked],
  ['replaced-since', replacedSince],
  ['not-accepted', notAccepted],
  ['drone-layer', droneLayer],
  ['laying-workers', layingWorkers],
  ['gone-since', goneSince],
  ['lost', lost],
  ['first-virgin-left', firstVirginLeft],
  ['late-start', lateStart],
];
