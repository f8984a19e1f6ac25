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
  const { policy, background, founders, seasons, replicates, variance } = input;
  const counts = [
    ['colonies', policy.colonies, 1],
    ['breeders', policy.breeders, 1],
    ['daughtersEach', policy.daughtersEach, 0],
    ['mates', policy.mates, 1],
    ['mostPerLine', policy.mostPerLine ?? 1, 1],
    ['seasons', seasons, 1],
    ['replicates', replicates, 1],
    ['founders', founders.length, 1],
    ['sexAlleles', background.sexAlleles, 2],
  ] as const;
  const shares = [
    ['success', policy.success],
    ['requeened', policy.requeened],
    ['ownDrones', policy.ownDrones],
    ['winterLoss', policy.winterLoss],
    ['winterOnMerit', policy.winterOnMerit],
    ['reliability', policy.reliability],
    ['background kinship', background.kinship],
  ] as const;
  return [
    ...counts.filter(([, value, least]) => !(Number.isInteger(value) && value >= least)).map(notACount),
    ...shares.filter(([, value]) => !(value >= 0 && value <= 1)).map(notAShare),
    ...(variance >= 0 ? [] : [negativeVariance(variance)]),
    ...(nodesNeeded(input) <= MOST_NODES ? [] : [tooMany(input)]),
  ];
}

function notACount([field, value, least]: readonly [string, number, number]): LookAheadProblem {
  return {
    field,
    found: String(value),
    because: `This is a whole number, ${least} or more.`,
    remedy: `Enter a whole number from ${least} up.`,
  };
}

function notAShare([field, value]: readonly [string, number]): LookAheadProblem {
  return {
    field,
    found: String(value),
    because: 'This is a share of a whole.',
    remedy: 'Enter a share from 0 to 1 (100 %).',
  };
}

function negativeVariance(value: number): LookAheadProblem {
  return {
    field: 'variance',
    found: String(value),
    because: 'A variance is not negative.',
    remedy: 'Enter 0 or more.',
  };
}

function tooMany({ policy, seasons }: LookAheadInput): LookAheadProblem {
  return {
    field: 'colonies',
    found: String(policy.colonies),
    because: `With ${seasons} seasons that is more than ${MOST_NODES} queens and fathers in one history.`,
    remedy: 'Look fewer seasons ahead, or at one yard at a time.',
  };
}
