/**
 * Whether a line comes through winter better than its neighbours, and how far that can be told from luck.
 *
 *   for each line: n colony-winters with neighbours, x survived; a neighbour is a colony of another line in the same
 *   yard and winter (or of none)
 *   p_j = (x_others + 2 mean) / (n_others + 2)      survival of the neighbours of yard-winter j, drawn to the mean
 *   expected share m = sum n_j p_j / n;   prior Beta(k m, k (1 - m)),  k by `empirical strength` over all lines
 *   posterior Beta(k m + x, k (1 - m) + n - x);   chance that the line is better = 1 - I_m(posterior)
 * The expected share is taken as known; with few neighbours the interval is therefore somewhat too narrow.
 *
 * Sources: beta-binomial shrinkage: Gelman et al., Bayesian Data Analysis, chapter 5 (from memory); comparison inside
 * yard and winter: Büchler et al. 2013, J. Apic. Res. 52(1) (read). The two neighbours' worth and the verdicts'
 * limits are project assumptions.
 * Cost: O(records + lines * groups). Unknowns: colonies of unknown line count as neighbours only; colony-winters without
 * neighbours are told but not compared.
 */
import { incompleteBeta } from '../../numerics/special.ts';
import { DEFAULT_LEVEL } from '../counts/intervals.ts';
import type { TraitRecord } from '../trait-record.ts';
import { betaBinomial, type Posterior, priorStrength, type Tally } from './shrinkage.ts';

export type LineVerdict =
  /** Nothing to compare with: every colony-winter stood alone or among its own line. */
  | 'no-neighbours'
  /** So few colony-winters that the line cannot be told from luck. */
  | 'too-few'
  | 'not-told-from-luck'
  | 'better'
  | 'worse';

export interface LineScore extends Tally {
  readonly line: string;
  /** Distinct winters and queens behind the figures. */
  readonly winters: number;
  readonly queens: number;
  /** Colony-winters that had neighbours, and how many of them survived. */
  readonly compared: Tally;
  /** Share of them that would have survived had they done as their neighbours did; absent without neighbours. */
  readonly expectedShare?: number;
  /** Survival of the line, shrunk towards the expected share, with credible interval. */
  readonly survival?: Posterior;
  /** Chance, 0..1, that the line truly survives better than its neighbours. */
  readonly chanceBetter?: number;
  readonly verdict: LineVerdict;
}

export interface LineScoreOptions {
  readonly level: number;
  /** Compared colony-winters below which no verdict is given. */
  readonly fewestColonyWinters: number;
  /** Chance that a difference is not luck from which it is called one. */
  readonly sureness: number;
  /** Neighbours that the common mean is worth in each yard and winter. */
  readonly meanWorth: number;
}

const LINE_SCORE_DEFAULTS: LineScoreOptions = {
  level: DEFAULT_LEVEL,
  fewestColonyWinters: 5,
  sureness: 0.95,
  meanWorth: 2,
};

interface LineTally {
  readonly line: string;
  readonly byGroup: Map<string, { started: number; survived: number }>;
  readonly seasons: Set<number>;
  readonly queens: Set<string>;
}

function add(
  tallies: Map<string, { started: number; survived: number }>,
  key: string,
  survived: number,
): void {
  const tally = tallies.get(key) ?? { started: 0, survived: 0 };
  tally.started++;
  tally.survived += survived;
  tallies.set(key, tally);
}

/**
 * Scores of all lines, the surest best first (by chance of being better; ties by name). `winters`: records of winter
 * survival (value 0 or 1); `lineOf`: line of a queen, `undefined` where unknown.
 */
export function lineScores(
  winters: readonly TraitRecord[],
  lineOf: (queen: string) => string | undefined,
  options: Partial<LineScoreOptions> = {},
): readonly LineScore[] {
  const settings = { ...LINE_SCORE_DEFAULTS, ...options };
  const all = new Map<string, { started: number; survived: number }>();
  const lines = new Map<string, LineTally>();
  for (const { queen, group, season, value } of winters) {
    add(all, group, value);
    const line = lineOf(queen);
    if (line === undefined) continue;
    const tally = lines.get(line) ?? { line, byGroup: new Map(), seasons: new Set(), queens: new Set() };
    add(tally.byGroup, group, value);
    tally.seasons.add(season);
    tally.queens.add(queen);
    lines.set(line, tally);
  }
  const survived = winters.reduce((sum, { value }) => sum + value, 0);
  const mean = (survived + 0.5) / (winters.length + 1);
  const compared = [...lines.values()].map((tally) => ({
    tally,
    ...againstNeighbours(tally, all, mean, settings),
  }));
  const tallies = compared.flatMap((one) =>
    one.mean === undefined ? [] : [{ ...one.tallyCompared, mean: one.mean }],
  );
  const { strength } = priorStrength(tallies);
  return compared
    .map(({ tally, tallyCompared, mean: expected }) =>
      score(tally, tallyCompared, expected, strength, settings),
    )
    .sort((a, b) => (b.chanceBetter ?? -1) - (a.chanceBetter ?? -1) || (a.line < b.line ? -1 : 1));
}

function againstNeighbours(
  { byGroup }: LineTally,
  all: ReadonlyMap<string, Tally>,
  mean: number,
  { meanWorth }: LineScoreOptions,
): { readonly tallyCompared: Tally; readonly mean?: number } {
  let [started, survived, expected] = [0, 0, 0];
  for (const [group, own] of byGroup) {
    const everyone = all.get(group)!;
    const others = everyone.started - own.started;
    if (others === 0) continue;
    const share = (everyone.survived - own.survived + meanWorth * mean) / (others + meanWorth);
    started += own.started;
    survived += own.survived;
    expected += own.started * share;
  }
  return { tallyCompared: { started, survived }, ...(started > 0 ? { mean: expected / started } : {}) };
}

function score(
  { line, byGroup, seasons, queens }: LineTally,
  compared: Tally,
  mean: number | undefined,
  strength: number,
  { level, fewestColonyWinters, sureness }: LineScoreOptions,
): LineScore {
  const counts = [...byGroup.values()];
  const base = {
    line,
    winters: seasons.size,
    queens: queens.size,
    started: counts.reduce((sum, tally) => sum + tally.started, 0),
    survived: counts.reduce((sum, tally) => sum + tally.survived, 0),
    compared,
  };
  if (mean === undefined) return { ...base, verdict: 'no-neighbours' };
  const survival = betaBinomial({ a: strength * mean, b: strength * (1 - mean) }, compared, level);
  const chanceBetter = 1 - incompleteBeta(mean, survival.a, survival.b);
  const verdict = verdictOf(compared.started < fewestColonyWinters, chanceBetter, sureness);
  return { ...base, expectedShare: mean, survival, chanceBetter, verdict };
}

function verdictOf(few: boolean, chanceBetter: number, sureness: number): LineVerdict {
  if (few) return 'too-few';
  if (chanceBetter >= sureness) return 'better';
  return chanceBetter <= 1 - sureness ? 'worse' : 'not-told-from-luck';
}
