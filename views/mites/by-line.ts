import {
  compareMiteGroups,
  type GroupComparison,
  type WashedColony,
} from '../../graph/merit/counts/comparison.ts';
import type { MiteCountObservation } from '../../graph/merit/observations.ts';
import { spoiltByTreatment } from '../../graph/merit/traits/after-treatment.ts';
import { dayNumber, dayOfNumber, type PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { traitObservations } from '../../src/registry/observations.ts';
import type { Registry } from '../../src/registry/state.ts';
import { STALE_DAYS } from './survey.ts';

/** The lines of one round of counts, each beside all other colonies counted in it. */

export type RoundMethod = 'wash' | 'sugar-shake';

export interface LineMites {
  readonly line: QueenId;
  /** Colonies of the line, and of all others. */
  readonly colonies: readonly [line: number, others: number];
  /** Rates and ratio: the others first, the line over them. */
  readonly comparison: GroupComparison;
}

export interface RoundByLine {
  readonly method: RoundMethod;
  readonly from: PlainDay;
  readonly to: PlainDay;
  /** The fewest mites first. */
  readonly lines: readonly LineMites[];
}

/** Mites rise within weeks: counts further apart than this are not set beside one another (assumed). */
const ROUND_DAYS = 30;

/** One colony in a round. */
interface Washed extends WashedColony {
  readonly line: QueenId | undefined;
  readonly day: number;
}

/**
 * The last round of each method that counts on bees, where two lines or more can be compared: for each colony its last
 * count in the round, of a known queen's workers, that no treatment spoilt.
 */
export function mitesByLine(
  registry: Registry,
  on: PlainDay,
  lineOf: (queen: string) => QueenId | undefined,
): readonly RoundByLine[] {
  const counts = countsOnBees(registry, on);
  return (['wash', 'sugar-shake'] as const).flatMap((method) => {
    const ofMethod = counts.filter(({ sample }) => sample.method === method);
    const last = Math.max(...ofMethod.map(({ day }) => day));
    const colonies = new Map<string, Washed>();
    for (const { sample, workers, colony, day } of ofMethod) {
      if (sample.method === 'natural-drop' || !workers.known || day <= last - ROUND_DAYS) continue;
      colonies.set(colony, { mites: sample.mites, bees: sample.bees, line: lineOf(workers.queen), day });
    }
    const round = roundOf(method, [...colonies.values()]);
    return round ? [round] : [];
  });
}

/** Counts of the last season that speak for the bees, in the order of days. */
function countsOnBees(registry: Registry, on: PlainDay): readonly MiteCountObservation[] {
  // Only counts: attributing every inspection of a large registry would take most of the time.
  const entries = registry.entries.filter(({ kind }) => kind === 'mite-count');
  const until = dayNumber(on);
  return traitObservations({ ...registry, entries })
    .filter((each): each is MiteCountObservation => each.kind === 'mite-count')
    .filter((each) => each.dayExact && each.day <= until && each.day > until - STALE_DAYS)
    .filter((each) => !spoiltByTreatment(each))
    .sort((a, b) => a.day - b.day);
}

function roundOf(method: RoundMethod, colonies: readonly Washed[]): RoundByLine | undefined {
  const lines = new Set(colonies.flatMap(({ line }) => line ?? []));
  const compared = [...lines].flatMap((line): LineMites[] => {
    const own = colonies.filter((colony) => colony.line === line);
    const others = colonies.filter((colony) => colony.line !== line);
    const comparison = compareMiteGroups(others, own);
    return comparison ? [{ line, colonies: [own.length, others.length], comparison }] : [];
  });
  if (compared.length < 2) return undefined;
  const days = colonies.map(({ day }) => day);
  return {
    method,
    from: dayOfNumber(Math.min(...days)),
    to: dayOfNumber(Math.max(...days)),
    lines: compared.sort(
      (a, b) => a.comparison.rates[1] - b.comparison.rates[1] || (a.line < b.line ? -1 : 1),
    ),
  };
}
