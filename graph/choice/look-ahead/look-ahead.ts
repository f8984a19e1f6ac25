/**
 * What a breeding policy leads to: many seeded histories of it, told season by season as bands.
 *
 *   gain        mean merit of the living queens less that of the founders, in the unit of the merits
 *   inbreeding  mean F of the living queens; viability: mean share of their brood that is viable
 *   alleles     different sex alleles among the two of each living queen; lines: lines with a living queen
 *
 * Bands are the 5 %, 50 % and 95 % points over the histories; where all colonies are lost, gain, inbreeding and
 * viability of that history are left out from then on, and the share of such histories is told.
 * Model and sources: simulate.ts. Cost O(replicates x seasons x colonies x entries).
 */
import { type Bands, bandsOf } from '../../numerics/bands.ts';
import { randomGenerator } from '../../numerics/random.ts';
import { type History, newHistory, viabilityOf } from './history.ts';
import { type LookAheadInput, type LookAheadProblem, lookAheadProblems } from './policy.ts';
import { simulate } from './simulate.ts';

export interface LookAheadOptions {
  /** Called with the share (0..1] of histories done. */
  readonly onProgress: (share: number) => void;
  /** Asked before each history; true ends the work. */
  readonly shouldStop: () => boolean;
  /** Whether only eggs with two unlike sex alleles become queens, as in nature; false checks plain theory. */
  readonly viable: boolean;
}

const LOOK_AHEAD_DEFAULTS: LookAheadOptions = {
  onProgress: () => undefined,
  shouldStop: () => false,
  viable: true,
};

export interface SeasonOutlook {
  /** 0: the founders. */
  readonly season: number;
  /** Absent when every history has lost all colonies. */
  readonly gain?: Bands;
  readonly inbreeding?: Bands;
  readonly viability?: Bands;
  readonly alleles: Bands;
  readonly lines: Bands;
  readonly colonies: Bands;
  /** Share (0..1) of histories without a colony left. */
  readonly lost: number;
}

export type LookAhead =
  | { readonly ok: true; readonly seasons: readonly SeasonOutlook[]; readonly replicates: number }
  | { readonly ok: false; readonly code: 'stopped' }
  | { readonly ok: false; readonly code: 'problems'; readonly problems: readonly LookAheadProblem[] };

/** Plays the policy; the same input gives the same answer. */
export function lookAhead(input: LookAheadInput, options: Partial<LookAheadOptions> = {}): LookAhead {
  const { onProgress, shouldStop, viable } = { ...LOOK_AHEAD_DEFAULTS, ...options };
  const problems = lookAheadProblems(input);
  if (problems.length > 0) return { ok: false, code: 'problems', problems };
  const random = randomGenerator(input.seed);
  const history = newHistory(input, viable);
  const tally = newTally(input);
  for (let replicate = 0; replicate < input.replicates; replicate += 1) {
    if (shouldStop()) return { ok: false, code: 'stopped' };
    simulate(history, random.fork(), (season, living) => note(tally, history, replicate, season, living));
    onProgress((replicate + 1) / input.replicates);
  }
  const seasons = Array.from({ length: input.seasons + 1 }, (_, season) => outlook(tally, season));
  return { ok: true, seasons, replicates: input.replicates };
}

/** Each figure by season and history; NaN where there is no colony left. Inside this file only. */
interface Tally {
  readonly replicates: number;
  readonly gain: Float64Array;
  readonly inbreeding: Float64Array;
  readonly viability: Float64Array;
  readonly alleles: Float64Array;
  readonly lines: Float64Array;
  readonly colonies: Float64Array;
  start: number;
}

function newTally({ seasons, replicates }: LookAheadInput): Tally {
  const figures = (): Float64Array => new Float64Array((seasons + 1) * replicates);
  return {
    replicates,
    gain: figures(),
    inbreeding: figures(),
    viability: figures(),
    alleles: figures(),
    lines: figures(),
    colonies: figures(),
    start: 0,
  };
}

function note(
  tally: Tally,
  history: History,
  replicate: number,
  season: number,
  living: readonly number[],
): void {
  const at = season * tally.replicates + replicate;
  const mean = (of: (queen: number) => number): number =>
    living.reduce((sum, queen) => sum + of(queen), 0) / living.length;
  const merit = mean((queen) => history.value[queen]!);
  if (season === 0) tally.start = merit;
  tally.gain[at] = merit - tally.start;
  tally.inbreeding[at] = mean((queen) => history.inbreeding[queen]!);
  tally.viability[at] = mean((queen) => viabilityOf(history, queen));
  tally.colonies[at] = living.length;
  const alleles = new Set<number>();
  const lines = new Set<number>();
  for (const queen of living) {
    alleles.add(history.first[queen]!).add(history.second[queen]!);
    lines.add(history.line[queen]!);
  }
  tally.alleles[at] = alleles.size;
  tally.lines[at] = lines.size;
}

function outlook(tally: Tally, season: number): SeasonOutlook {
  const { replicates } = tally;
  const all = (figures: Float64Array): Float64Array =>
    figures.subarray(season * replicates, (season + 1) * replicates);
  const known = (figures: Float64Array): Float64Array => all(figures).filter((each) => !Number.isNaN(each));
  const gain = known(tally.gain);
  return {
    season,
    ...(gain.length === 0
      ? {}
      : {
          gain: bandsOf(gain),
          inbreeding: bandsOf(known(tally.inbreeding)),
          viability: bandsOf(known(tally.viability)),
        }),
    alleles: bandsOf(all(tally.alleles)),
    lines: bandsOf(all(tally.lines)),
    colonies: bandsOf(all(tally.colonies)),
    lost: 1 - gain.length / replicates,
  };
}
