import { groupBy } from '../../graph/grouping.ts';
import { collectRecords } from '../../graph/merit/collect-records.ts';
import { type LineScore, lineScores } from '../../graph/merit/survival/line-scores.ts';
import { winterSurvival } from '../../graph/merit/traits/winter-survival.ts';
import { dayNumber, type PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { traitObservations } from '../../src/registry/observations.ts';
import type { Registry } from '../../src/registry/state.ts';
import { wintersEntered } from '../../src/registry/winters-of-queen.ts';
import type { Life } from './lives.ts';

/** One winter of a line: queens who headed colonies on 1 December, and those of them who still did on 1 March. */
export interface WinterCount {
  /** Year of the spring that ended it. */
  readonly spring: number;
  readonly wentIn: number;
  readonly cameOut: number;
}

export interface LineSummary {
  /** The founder, after whom the line is known. */
  readonly line: QueenId;
  readonly title: string;
  readonly named: boolean;
  /** A to Z, then AA: by the founder's first day. */
  readonly letter: string;
  /** 1 to 8: the colour that goes with the letter. */
  readonly hue: number;
  readonly living: number;
  /** Of the living, those whose dam line to the founder is probable only. */
  readonly livingProbable: number;
  readonly expected: number;
  readonly queens: number;
  /** Queens who may live, and nobody here knows where: told of by another keeper, or never put into a colony. */
  readonly unknown: number;
  /** Day numbers of the first day and, where nobody is left or awaited, of the last. */
  readonly since: number;
  readonly ended?: number;
  readonly winters: readonly WinterCount[];
  /** Whether her winters tell the line from its neighbours; absent when no winter of it counts. */
  readonly score?: LineScore;
}

/** Every line, by the first day of its founder. */
export function lineSummaries(
  registry: Registry,
  lives: readonly Life[],
  on: PlainDay,
): readonly LineSummary[] {
  const scores = scoresOf(registry, lives);
  return [...groupBy(lives, ({ line }) => line).values()]
    .sort((a, b) => (a[0]?.start ?? 0) - (b[0]?.start ?? 0) || ((a[0]?.id ?? '') < (b[0]?.id ?? '') ? -1 : 1))
    .flatMap((line, index) => summary(registry, line, index, on, scores.get(line[0]?.line ?? '')));
}

/** Each line's winters beside those of its neighbours of the same yard and winter. */
function scoresOf(registry: Registry, lives: readonly Life[]): ReadonlyMap<string, LineScore> {
  const line = new Map<string, string>(lives.map((life) => [life.id, life.line]));
  // Only what tells of winters: attributing every inspection of a large registry would take most of the time.
  const entries = registry.entries.filter(({ kind }) => kind === 'winter-outcome' || kind === 'colony-ended');
  const { records } = collectRecords(winterSurvival, traitObservations({ ...registry, entries }));
  return new Map(lineScores(records, (queen) => line.get(queen)).map((score) => [score.line, score]));
}

/** Lines with a living or awaited queen, then those that ended; each by its letter. */
export function aliveFirst(lines: readonly LineSummary[]): readonly LineSummary[] {
  const rank = ({ living, expected }: LineSummary) => (living + expected > 0 ? 0 : 1);
  return [...lines].sort((a, b) => rank(a) - rank(b));
}

/** Hardly a queen grows older (common practice, no source): one of whom nothing was heard for so long lives no more. */
const OLDEST_QUEEN_DAYS = 6 * 365;

function summary(
  registry: Registry,
  line: readonly Life[],
  index: number,
  on: PlainDay,
  score: LineScore | undefined,
): LineSummary[] {
  const founder = line[0];
  if (!founder) return [];
  const living = line.filter(({ fate }) => fate === 'living');
  const expected = line.filter(({ fate }) => fate === 'expected');
  const unknown = line.filter(
    ({ id, start }) =>
      registry.queens.get(id)?.state.is === 'unknown' && dayNumber(on) - start < OLDEST_QUEEN_DAYS,
  );
  return [
    {
      line: founder.line,
      title: founder.title,
      named: founder.named,
      letter: letterOf(index),
      hue: (index % HUES) + 1,
      living: living.length,
      livingProbable: living.filter(({ lineProbability }) => lineProbability < 1).length,
      expected: expected.length,
      queens: line.length,
      unknown: unknown.length,
      since: founder.start,
      ...(living.length + expected.length + unknown.length > 0
        ? {}
        : { ended: Math.max(...line.map(({ end, start }) => end ?? start)) }),
      winters: winterCounts(registry, line, on),
      ...(score ? { score } : {}),
    },
  ];
}

const HUES = 8;

function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

/** The winters of which it is on record by `on` who came out, from the first that a queen of the group went into. */
export function winterCounts(
  registry: Registry,
  group: readonly Life[],
  on: PlainDay,
): readonly WinterCount[] {
  const wentIn = new Map<number, number>();
  const cameOut = new Map<number, number>();
  for (const { id, winters } of group) {
    const queen = registry.queens.get(id);
    for (const spring of queen ? wintersEntered(queen, on) : []) {
      wentIn.set(spring, (wentIn.get(spring) ?? 0) + 1);
      if (winters.includes(spring)) cameOut.set(spring, (cameOut.get(spring) ?? 0) + 1);
    }
  }
  return [...wentIn]
    .sort((a, b) => a[0] - b[0])
    .map(([spring, count]) => ({ spring, wentIn: count, cameOut: cameOut.get(spring) ?? 0 }));
}
