/**
 * Brood viability of a queen, or of a daughter to come, with a named drone source: expected and its spread.
 *
 *   loss of one history = share of mates that carry one of her two alleles / 2
 *   viability = 1 - loss, over many histories drawn by gene dropping (gene-drop.ts)
 *
 * The spread holds all chance there is: which alleles came down to her, which to the drone mothers, which drones
 * she met. Exact up to the Monte Carlo error, which is told; the first-order figure from kinship stands beside it.
 * A list of queens and drone sources is dropped at one go: in each history all queens meet the same drones of a source,
 * so that differences between them are told more sharply than the figures themselves.
 * Sources: as gene-drop.ts and populations.ts. Cost O(histories x (ancestors + queens x sources x mates)).
 * Unknown: a background without a number of alleles throws; the caller asks the keeper or states an assumption.
 */
import { NodeKind, type Pedigree } from '../kinship/pedigree.ts';
import { type Bands, bandsOf } from '../numerics/bands.ts';
import { type Random, randomGenerator } from '../numerics/random.ts';
import { type DroneSource, matesNodeOf, queenNodeOf } from './drone-source.ts';
import { type DropPlan, dropPlan } from './drop-plan.ts';
import { type ExpectedLoss, expectedLoss } from './expected-loss.ts';
import { type DroppedAlleles, geneDrop, wholeMates } from './gene-drop.ts';
import type { BackgroundAlleles } from './populations.ts';

/** A queen of the pedigree, or a daughter that she may still have by the drones she met. */
export type ViabilityOf = { readonly queen: string } | { readonly daughterOf: string };

export interface ViabilityQuery {
  readonly of: ViabilityOf;
  readonly drones: DroneSource;
  /** Effective number of mates (>= 1); without effect when every drone is known by himself. */
  readonly mates: number;
  readonly alleles: BackgroundAlleles;
}

/** Several queens, each with each of several drone sources. */
export interface ViabilityList extends Omit<ViabilityQuery, 'of' | 'drones'> {
  readonly of: readonly ViabilityOf[];
  readonly drones: readonly DroneSource[];
}

export interface ViabilityOptions {
  readonly histories: number;
  readonly seed: number;
}

const VIABILITY_DEFAULTS: ViabilityOptions = { histories: 4_000, seed: 1 };

/** Viability (0.5..1) between histories: mean, 5 %, middle and 95 %. */
export interface BroodViability extends Bands {
  readonly standardDeviation: number;
  /** Expected loss (0..0.5) by gene dropping, and the Monte Carlo error of it. */
  readonly loss: number;
  readonly standardError: number;
  /** Chance (0..1) that not one mate matches. */
  readonly noMatch: number;
  /** The same loss to first order, with the kinship it comes from. */
  readonly firstOrder: ExpectedLoss;
  readonly histories: number;
}

/** Throws on unknown ids and on a dam without a mating. */
export function broodViability(
  pedigree: Pedigree,
  query: ViabilityQuery,
  options: Partial<ViabilityOptions> = {},
): BroodViability {
  return broodViabilities(pedigree, { ...query, of: [query.of], drones: [query.drones] }, options)[0]![0]!;
}

/** The viability of queen q with drone source s at [s][q]. Throws on unknown ids and on a dam without a mating. */
export function broodViabilities(
  pedigree: Pedigree,
  list: ViabilityList,
  options: Partial<ViabilityOptions> = {},
): BroodViability[][] {
  const { histories, seed } = { ...VIABILITY_DEFAULTS, ...options };
  const genes = list.of.map((of) => geneNodes(pedigree, of));
  const targets = [...genes, ...list.drones].flatMap(({ nodes }) => [...nodes]);
  const plan = dropPlan(pedigree, targets, list.alleles);
  const samples = sampleViabilities(plan, genes, list, histories, seed);
  return list.drones.map((drones, s) =>
    genes.map((queen, q) => ({
      ...summary(samples[s * genes.length + q]!),
      firstOrder: expectedLoss(pedigree, queen, drones, list.alleles),
      histories,
    })),
  );
}

function summary(viabilities: Float64Array): Omit<BroodViability, 'firstOrder' | 'histories'> {
  const bands = bandsOf(viabilities);
  let squares = 0;
  let unmatched = 0;
  for (const each of viabilities) {
    squares += (each - bands.mean) ** 2;
    if (each === 1) unmatched += 1;
  }
  const standardDeviation = Math.sqrt(squares / Math.max(1, viabilities.length - 1));
  return {
    ...bands,
    standardDeviation,
    loss: 1 - bands.mean,
    standardError: standardDeviation / Math.sqrt(viabilities.length),
    noMatch: unmatched / viabilities.length,
  };
}

/** Where the two genes of the queen come from: herself, or her dam and her dam's mates. */
export function geneNodes(pedigree: Pedigree, of: ViabilityOf): DroneSource {
  if ('queen' in of)
    return { nodes: Int32Array.of(queenNodeOf(pedigree, of.queen)), weights: Float64Array.of(1) };
  const mates = matesNodeOf(pedigree, of.daughterOf);
  if (mates === undefined) throw new RangeError(`'${of.daughterOf}' has no mating, so no daughters to come.`);
  const dam = queenNodeOf(pedigree, of.daughterOf);
  return { nodes: Int32Array.of(dam, mates), weights: Float64Array.of(0.5, 0.5) };
}

/** Viabilities over the histories: those of queen q with source s in list s * queens + q. */
function sampleViabilities(
  plan: DropPlan,
  queens: readonly DroneSource[],
  { drones: sources, mates }: Pick<ViabilityList, 'drones' | 'mates'>,
  histories: number,
  seed: number,
): Float64Array[] {
  const random = randomGenerator(seed);
  const dropped = geneDrop(plan, random);
  const known = sources.map(({ nodes }) =>
    nodes.every((node) => plan.pedigree.kind[node] === NodeKind.drone),
  );
  const samples = Array.from({ length: sources.length * queens.length }, () => new Float64Array(histories));
  for (let history = 0; history < histories; history += 1) {
    dropped.drop();
    const own = queens.map(({ nodes }) => ownAlleles(dropped, nodes));
    for (let s = 0; s < sources.length; s += 1) {
      const met = known[s]
        ? knownDrones(dropped, sources[s]!)
        : flownDrones(dropped, sources[s]!, mates, random);
      for (let q = 0; q < queens.length; q += 1) {
        samples[s * queens.length + q]![history] = 1 - matched(own[q]!, met) / 2;
      }
    }
  }
  return samples;
}

/** The drones met in one history, and the share of the eggs of each. */
interface Met {
  readonly alleles: readonly number[];
  readonly shares: ArrayLike<number>;
}

function knownDrones({ gamete }: DroppedAlleles, { nodes, weights }: DroneSource): Met {
  return { alleles: Array.from(nodes, gamete), shares: weights };
}

function flownDrones({ gamete }: DroppedAlleles, source: DroneSource, mates: number, random: Random): Met {
  const count = wholeMates(mates, random);
  const alleles: number[] = [];
  for (let mate = 0; mate < count; mate += 1) {
    alleles.push(gamete(source.nodes[random.weighted(source.weights)]!));
  }
  return { alleles, shares: new Float64Array(count).fill(1 / count) };
}

/** Share of the eggs by drones that carry one of the two alleles. */
function matched([a, b]: readonly [number, number], { alleles, shares }: Met): number {
  let share = 0;
  for (let k = 0; k < alleles.length; k += 1) {
    if (alleles[k] === a || alleles[k] === b) share += shares[k]!;
  }
  return share;
}

function ownAlleles({ first, second, gamete }: DroppedAlleles, genes: Int32Array): readonly [number, number] {
  if (genes.length === 1) return [first[genes[0]!]!, second[genes[0]!]!];
  for (;;) {
    const a = gamete(genes[0]!);
    const b = gamete(genes[1]!);
    if (a !== b) return [a, b];
  }
}
