/**
 * What the look-ahead is asked: a way of breeding, the stock it starts from, and how long and how often to play it.
 * Model, formulas and sources: simulate.ts.
 */

export interface BreedingPolicy {
  /** Colonies kept from season to season, at most. */
  readonly colonies: number;
  /** Queens chosen to breed from each season. */
  readonly breeders: number;
  /** Daughters begun from each of them each season. */
  readonly daughtersEach: number;
  /** Share (0..1) of daughters begun that come to lay. */
  readonly success: number;
  /** Share (0..1) of colonies that came through winter and get a daughter in place of their queen, worst first. */
  readonly requeened: number;
  /** At most so many breeders out of one line; absent: no limit. */
  readonly mostPerLine?: number;
  /** Share (0..1) of the drones met that are the keeper's own. */
  readonly ownDrones: number;
  /** Whose colonies fly those drones: all that came through winter, or only the breeders'. */
  readonly droneMothers: 'all' | 'breeders';
  /** Drones each queen mates with, sperm alike: a whole number, 1 or more. */
  readonly mates: number;
  /** Share (0..1) of colonies lost in a winter, at the merit the stock starts with. */
  readonly winterLoss: number;
  /** Correlation (0..1) of a queen's merit with what brings her colony through winter; 0: winters are blind. */
  readonly winterOnMerit: number;
  /** Reliability (0..1) of the index by which breeders are chosen; 0: chosen by lot. */
  readonly reliability: number;
}

export interface FounderQueen {
  /** Line she belongs to. */
  readonly line: string;
  /** Estimated merit; absent: nothing is known, she is drawn from the background. */
  readonly merit?: number;
  /** Prediction error variance of that estimate; 0 when absent and a merit is given. */
  readonly errorVariance?: number;
}

export interface LookAheadInput {
  readonly policy: BreedingPolicy;
  readonly founders: readonly FounderQueen[];
  /** Kinship (0..1) of the founders, row by row, (1 + F)/2 on the diagonal; absent: out of the background. */
  readonly founderKinship?: ArrayLike<number>;
  readonly background: {
    /** Mean merit of the background, in the unit of the merits. */
    readonly merit: number;
    /** Kinship (0..1) of its drones with one another and with all stock. */
    readonly kinship: number;
    /** Equally frequent sex alleles in it. */
    readonly sexAlleles: number;
  };
  /** Additive variance of the merit in the background. */
  readonly variance: number;
  readonly seasons: number;
  readonly replicates: number;
  readonly seed: number;
}

export interface LookAheadProblem {
  readonly field: string;
  readonly found: string;
  readonly because: string;
  readonly remedy: string;
}

/** Queens and fathers that one history may hold: their kinships take up to 150 MB. */
const MOST_NODES = 6_000;

/** Room for every queen and every father that one history can bring forth. */
export function nodesNeeded({ founders, seasons, policy }: LookAheadInput): number {
  return founders.length + 2 * seasons * Math.max(policy.colonies, founders.length);
}

/** Everything in the settings that cannot be played. */
export function lookAheadProblems(input: LookAheadInput): LookAheadProblem[] {
  const { policy, background } = input;
  const problems: LookAheadProblem[] = [];
  const check = (fits: boolean, field: string, found: number, because: string, remedy: string): void => {
    if (!fits) problems.push({ field, found: String(found), because, remedy });
  };
  const count = (field: string, value: number, least: number): void =>
    check(
      Number.isInteger(value) && value >= least,
      field,
      value,
      `This is a whole number, ${least} or more.`,
      `Enter a whole number from ${least} up.`,
    );
  const share = (field: string, value: number): void =>
    check(
      value >= 0 && value <= 1,
      field,
      value,
      'This is a share of a whole.',
      'Enter a share from 0 to 1 (100 %).',
    );
  count('colonies', policy.colonies, 1);
  count('breeders', policy.breeders, 1);
  count('daughtersEach', policy.daughtersEach, 0);
  count('mates', policy.mates, 1);
  count('seasons', input.seasons, 1);
  count('replicates', input.replicates, 1);
  count('founders', input.founders.length, 1);
  count('sexAlleles', background.sexAlleles, 2);
  if (policy.mostPerLine !== undefined) count('mostPerLine', policy.mostPerLine, 1);
  share('success', policy.success);
  share('requeened', policy.requeened);
  share('ownDrones', policy.ownDrones);
  share('winterLoss', policy.winterLoss);
  share('winterOnMerit', policy.winterOnMerit);
  share('reliability', policy.reliability);
  share('background kinship', background.kinship);
  check(input.variance >= 0, 'variance', input.variance, 'A variance is not negative.', 'Enter 0 or more.');
  check(
    nodesNeeded(input) <= MOST_NODES,
    'colonies',
    policy.colonies,
    `With ${input.seasons} seasons that is more than ${MOST_NODES} queens and fathers in one history.`,
    'Look fewer seasons ahead, or at one yard at a time.',
  );
  return problems;
}
