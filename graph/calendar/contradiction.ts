/**
 * Where the record and what was seen do not agree, and which readings to think of first.
 *
 *   greedy: in order of day, a sight that does not agree with the making and the earlier sights is set aside
 *
 * Source: common practice for the readings (no source); biology.ts for the days. Cost one `solve` a sight.
 */
import type { Day } from './biology.ts';
import { type History, windowsOf } from './history.ts';
import type { Observation, SeenField } from './observation.ts';
import type { ReadingCode } from './readings.ts';
import type { Windows } from './solve.ts';
import type { Statement } from './statements.ts';

export type ContradictionCode =
  | 'cells-too-early'
  | 'cells-too-late'
  | 'cells-gone'
  | 'virgin-too-early'
  | 'virgin-too-late'
  | 'not-emerged-in-time'
  | 'eggs-too-early'
  | 'no-eggs-in-time'
  | 'old-queen-seen'
  | 'several-eggs'
  | 'drone-brood-only';

export interface Contradiction {
  readonly code: ContradictionCode;
  readonly day: Day;
  readonly field: SeenField;
  /** True when it was seen, false when it was looked for and not there. */
  readonly found: boolean;
  /** Readings that agree with all that was seen, likeliest first; empty when none does. */
  readonly readings: readonly ReadingCode[];
}

/** Readings in the order in which a keeper would think of them; the rest follow in their own order. */
const THINK_FIRST: Readonly<Record<ContradictionCode, readonly ReadingCode[]>> = {
  'cells-too-early': ['not-accepted', 'cells-older', 'queen-overlooked'],
  'cells-too-late': ['replaced-since', 'not-accepted', 'first-virgin-left'],
  'cells-gone': ['first-virgin-left', 'queen-overlooked', 'lost'],
  'virgin-too-early': ['cells-older'],
  'virgin-too-late': ['replaced-since', 'first-virgin-left'],
  'not-emerged-in-time': ['first-virgin-left', 'lost'],
  'eggs-too-early': ['queen-overlooked', 'cells-older'],
  'no-eggs-in-time': ['gone-since', 'lost', 'first-virgin-left', 'late-start'],
  'old-queen-seen': ['queen-overlooked'],
  'several-eggs': ['laying-workers', 'drone-layer'],
  'drone-brood-only': ['drone-layer', 'laying-workers'],
};

const BROOD: readonly SeenField[] = ['eggs', 'youngBrood', 'openBrood', 'cappedWorkerBrood'];

function queenCode(statement: Statement, windows: Windows): ContradictionCode {
  if (statement.anyOf.length === 0) return 'old-queen-seen';
  if (statement.day < (windows.emerged?.earliest ?? Number.NEGATIVE_INFINITY)) return 'virgin-too-early';
  if (statement.day < (windows.laying?.earliest ?? Number.NEGATIVE_INFINITY)) return 'eggs-too-early';
  return 'virgin-too-late';
}

function codeOf(statement: Statement, windows: Windows): ContradictionCode {
  const { field, found, day } = statement;
  if (field === 'queen') return queenCode(statement, windows);
  if (field === 'severalEggsInCells') return 'several-eggs';
  if (field === 'droneBroodOnly') return 'drone-brood-only';
  if (BROOD.includes(field)) return found ? 'eggs-too-early' : 'no-eggs-in-time';
  if (field === 'emergedCells') return found ? 'virgin-too-early' : 'not-emerged-in-time';
  if (!found) return 'cells-gone';
  return day < (windows.capped?.earliest ?? Number.NEGATIVE_INFINITY) ? 'cells-too-early' : 'cells-too-late';
}

export interface Agreement {
  /** Windows under the sights that agree. */
  readonly windows: Windows;
  readonly kept: readonly Statement[];
  readonly setAside: readonly (Omit<Contradiction, 'readings'> & { readonly statement: Statement })[];
}

/** Takes the sights in order of day and sets aside each that does not agree with those before it. */
export function agreement(history: History, statements: readonly Statement[]): Agreement {
  const kept: Statement[] = [];
  const setAside: (Omit<Contradiction, 'readings'> & { statement: Statement })[] = [];
  let windows = windowsOf(history, kept);
  if (!windows) throw new Error('A making contradicts the biology table.');
  for (const statement of statements) {
    const next = windowsOf(history, [...kept, statement]);
    if (next) {
      windows = next;
      kept.push(statement);
    } else {
      const { day, field, found } = statement;
      setAside.push({ code: codeOf(statement, windows), day, field, found, statement });
    }
  }
  return { windows, kept, setAside };
}

/** The contradiction whose readings to think of first, in the light of the other sights. */
function leading(code: ContradictionCode, observations: readonly Observation[]): ContradictionCode {
  const cells = observations.some(({ openCells, cappedCells }) => openCells || cappedCells);
  if (code === 'eggs-too-early' && cells) return 'cells-too-early';
  const several = observations.some(({ severalEggsInCells }) => severalEggsInCells);
  return code === 'drone-brood-only' && several ? 'several-eggs' : code;
}

/** Readings sorted: first those a keeper thinks of at this contradiction, then the others as they stand. */
export function byPlausibility(
  code: ContradictionCode,
  readings: readonly ReadingCode[],
  observations: readonly Observation[],
): readonly ReadingCode[] {
  const first = THINK_FIRST[leading(code, observations)].filter((reading) => readings.includes(reading));
  return [...first, ...readings.filter((reading) => !first.includes(reading))];
}
