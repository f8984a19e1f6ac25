/**
 * The stock of one simulated history: what each queen and each father is, and how daughters come about.
 * Model and sources: simulate.ts.
 */
import type { Random } from '../../numerics/random.ts';
import {
  type KinLedger,
  kinshipOf,
  newLedger,
  writeBackgroundDrone,
  writeDrone,
  writeFounders,
  writeQueen,
} from './kin-ledger.ts';
import { type LookAheadInput, nodesNeeded } from './policy.ts';

export interface History {
  readonly input: LookAheadInput;
  readonly ledger: KinLedger;
  /** Merit of a queen, or of a father's one set of genes. */
  readonly value: Float64Array;
  readonly inbreeding: Float64Array;
  /** Sex alleles; of a father the first alone. */
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Number of the line of each queen. */
  readonly line: Int32Array;
  /** For each queen and mate: his mother's entry (-1: background), his sex allele, his own entry (-1: none yet). */
  readonly mateMother: Int32Array;
  readonly mateAllele: Int32Array;
  readonly mateEntry: Int32Array;
  /** Number of each line by name. */
  readonly lines: ReadonlyMap<string, number>;
  /** Whether only eggs with two unlike sex alleles become queens. */
  readonly viable: boolean;
}

const BACKGROUND = -1;

/** A history before its first season, with room for every queen and mate that its seasons can need. */
export function newHistory(input: LookAheadInput, viable: boolean): History {
  const room = nodesNeeded(input);
  const slots = room * input.policy.mates;
  const names = new Set(input.founders.map(({ line }) => line));
  return {
    input,
    ledger: newLedger(room),
    value: new Float64Array(room),
    inbreeding: new Float64Array(room),
    first: new Int32Array(room),
    second: new Int32Array(room),
    line: new Int32Array(room),
    mateMother: new Int32Array(slots),
    mateAllele: new Int32Array(slots),
    mateEntry: new Int32Array(slots),
    lines: new Map([...names].map((name, number) => [name, number])),
    viable,
  };
}

/** Draws the founders anew; entries 0 .. founders - 1. Their mates are still to come. */
export function drawFounders(history: History, random: Random): void {
  const { input, ledger, first, second } = history;
  const { founders, founderKinship, background, variance } = input;
  writeFounders(ledger, founders.length, founderKinship, background.kinship);
  founders.forEach((founder, entry) => {
    const spread = founder.merit === undefined ? variance : (founder.errorVariance ?? 0);
    history.value[entry] = (founder.merit ?? background.merit) + Math.sqrt(spread) * random.normal();
    history.inbreeding[entry] = 2 * kinshipOf(ledger, entry, entry) - 1;
    history.line[entry] = history.lines.get(founder.line)!;
    first[entry] = random.integer(background.sexAlleles);
    // The second differs from the first: one of the others, each equally likely.
    const other = random.integer(background.sexAlleles - 1);
    second[entry] = other < first[entry]! ? other : other + 1;
  });
}

/** Mates a queen with drones of these mothers and of the background, in the shares of the policy. */
export function mate(history: History, queen: number, mothers: readonly number[], random: Random): void {
  const { input, first, second, mateMother, mateAllele, mateEntry } = history;
  const { policy, background } = input;
  const start = queen * policy.mates;
  for (let slot = start; slot < start + policy.mates; slot += 1) {
    const own = mothers.length > 0 && random.uniform() < policy.ownDrones;
    const mother = own ? mothers[random.integer(mothers.length)]! : BACKGROUND;
    mateMother[slot] = mother;
    mateEntry[slot] = -1;
    if (mother === BACKGROUND) mateAllele[slot] = random.integer(background.sexAlleles);
    else mateAllele[slot] = random.bits() & 1 ? first[mother]! : second[mother]!;
  }
}

/** A daughter of this queen by one of her mates; unmated. Returns her entry. */
export function bear(history: History, dam: number, random: Random): number {
  const { input, ledger, first, second, mateAllele } = history;
  let slot: number;
  let allele: number;
  do {
    slot = dam * input.policy.mates + random.integer(input.policy.mates);
    allele = random.bits() & 1 ? first[dam]! : second[dam]!;
  } while (history.viable && allele === mateAllele[slot]);
  const father = fatherOf(history, slot, random);
  const daughter = writeQueen(ledger, dam, father);
  history.value[daughter] = gamete(history, dam, random) + history.value[father]!;
  history.inbreeding[daughter] = kinshipOf(ledger, dam, father);
  history.line[daughter] = history.line[dam]!;
  first[daughter] = allele;
  second[daughter] = mateAllele[slot]!;
  return daughter;
}

/** Share (0..1) of the brood of a queen that is viable. */
export function viabilityOf({ input, first, second, mateAllele }: History, queen: number): number {
  const { mates } = input.policy;
  let matched = 0;
  for (let slot = queen * mates; slot < (queen + 1) * mates; slot += 1) {
    if (mateAllele[slot] === first[queen] || mateAllele[slot] === second[queen]) matched += 1;
  }
  return 1 - matched / (2 * mates);
}

/** The entry of a mate, written when he first fathers a daughter. */
function fatherOf(history: History, slot: number, random: Random): number {
  const { input, ledger, mateMother, mateEntry, value } = history;
  if (mateEntry[slot]! >= 0) return mateEntry[slot]!;
  const mother = mateMother[slot]!;
  const drone =
    mother === BACKGROUND
      ? writeBackgroundDrone(ledger, input.background.kinship)
      : writeDrone(ledger, mother);
  value[drone] = mother === BACKGROUND ? backgroundGamete(input, random) : gamete(history, mother, random);
  mateEntry[slot] = drone;
  return drone;
}

/** Merit of one gamete of a queen: half of hers, and the chance of which half. */
function gamete({ value, inbreeding, input }: History, queen: number, random: Random): number {
  const spread = Math.max(0, 1 - inbreeding[queen]!) * input.variance;
  return value[queen]! / 2 + (Math.sqrt(spread) / 2) * random.normal();
}

function backgroundGamete({ background, variance }: LookAheadInput, random: Random): number {
  return background.merit / 2 + Math.sqrt(variance / 2) * random.normal();
}
