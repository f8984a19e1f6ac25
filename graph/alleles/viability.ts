/**
 * Brood viability of a queen, or of a daughter to come, with a named drone source: expected and its spread.
 *
 *   loss of one history = share of mates that carry one of her two alleles / 2
 *   viability = 1 - loss, over many histories drawn by gene dropping (gene-drop.ts)
 *
 * The spread holds all chance there is: which alleles came down to her, which to the drone mothers, which drones
 * she met. Exact up to the Monte Carlo error, which is told; the first-order figure from kinship stands beside it.
 * Sources: as gene-drop.ts and populations.ts. Cost O(histories x (ancestors + mates)).
 * Unknown: a background without a number of alleles throws; the caller asks the keeper or states an assumption.
 */
import { NodeKind, type Pedigree } from '../kinship/pedigree.ts';
import { type Bands, bandsOf } from '../numerics/bands.ts';
import { randomGenerator } from '../numerics/random.ts';
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

export interface ViabilityOptions {
  readonly histories: number;
  readonly seed: number;
}

export const VIABILITY_DEFAULTS: ViabilityOptions = { histories: 4_000, seed: 1 };

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
  const { histories, seed } = { ...VIABILITY_DEFAULTS, ...options };
  const genes = geneNodes(pedigree, query.of);
  const plan = dropPlan(pedigree, [...genes.nodes, ...query.drones.nodes], query.alleles);
  const viabilities = sampleViabilities(plan, genes.nodes, query, histories, seed);
  const bands = bandsOf(viabilities);
  const squares = viabilities.reduce((sum, each) => sum + (each - bands.mean) ** 2, 0);
  const standardDeviation = Math.sqrt(squares / Math.max(1, histories - 1));
  return {
    ...bands,
    standardDeviation,
    loss: 1 - bands.mean,
    standardError: standardDeviation / Math.sqrt(histories),
    noMatch: viabilities.reduce((count, each) => count + (each === 1 ? 1 : 0), 0) / histories,
    firstOrder: expectedLoss(pedigree, genes, query.drones, query.alleles),
    histories,
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

function sampleViabilities(
  plan: DropPlan,
  genes: Int32Array,
  { drones, mates }: ViabilityQuery,
  histories: number,
  seed: number,
): Float64Array {
  const random = randomGenerator(seed);
  const dropped = geneDrop(plan, random);
  const known = drones.nodes.every((node) => plan.pedigree.kind[node] === NodeKind.drone);
  const viabilities = new Float64Array(histories);
  for (let history = 0; history < histories; history += 1) {
    dropped.drop();
    const [a, b] = ownAlleles(dropped, genes);
    const matches = (node: number): number => {
      const allele = dropped.gamete(node);
      return allele === a || allele === b ? 1 : 0;
    };
    let lost = 0;
    if (known) {
      drones.nodes.forEach((node, k) => {
        lost += drones.weights[k]! * matches(node);
      });
    } else {
      const count = wholeMates(mates, random);
      for (let mate = 0; mate < count; mate += 1) {
        lost += matches(drones.nodes[random.weighted(drones.weights)]!) / count;
      }
    }
    viabilities[history] = 1 - lost / 2;
  }
  return viabilities;
}

function ownAlleles({ first, second, gamete }: DroppedAlleles, genes: Int32Array): readonly [number, number] {
  if (genes.length === 1) return [first[genes[0]!]!, second[genes[0]!]!];
  for (;;) {
    const a = gamete(genes[0]!);
    const b = gamete(genes[1]!);
    if (a !== b) return [a, b];
  }
}
