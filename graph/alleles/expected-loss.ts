/**
 * Expected brood loss of a queen with a drone source, at once from kinship and from where their genes come.
 *
 *   loss = f + (1 - f) sum over backgrounds b, b' of g_b(queen) g_b'(drones) loss(b, b')
 *
 * f: kinship of queen and drone source (0..1); g: share of the genes out of each background, from the sweep T'e;
 * loss(b, b'): loss of an unrelated pair (populations.ts). One background of k alleles: f + (1 - f)/k.
 * First order: it does not know that every queen on the way was heterozygous, so that it overstates the loss in
 * inbred lines (selfing for ever: f goes to 1, the true loss stays 1/2). It is capped at 1/2, the loss when every
 * drone matches; the exact figure is gene dropping (viability.ts).
 * Source: derived here; Page 1980, Genetics 96:263 for 1/k (from memory). Cost O(nodes).
 */
import type { Pedigree } from '../kinship/pedigree.ts';
import { multiplyA, transposeSweep } from '../kinship/sweeps.ts';
import type { DroneSource } from './drone-source.ts';
import { type BackgroundAlleles, unrelatedLoss } from './populations.ts';

/** Loss (0..0.5) from kinship (0..1) and the loss of an unrelated pair. */
export function lossFromKinship(kinship: number, unrelated: number): number {
  return Math.min(0.5, kinship + (1 - kinship) * unrelated);
}

/** Share of the genes of a weighted set of nodes out of each background, by id. Sums to the sum of weights. */
export function backgroundShares(pedigree: Pedigree, { nodes, weights }: DroneSource): Map<string, number> {
  const flow = new Float64Array(pedigree.size);
  nodes.forEach((node, k) => {
    flow[node]! += weights[k]!;
  });
  transposeSweep(pedigree, flow, flow);
  const shares = new Map<string, number>();
  for (const [id, node] of pedigree.backgroundNode) if (flow[node]! > 0) shares.set(id, flow[node]!);
  return shares;
}

export interface ExpectedLoss {
  /** Kinship (0..1) of queen and drones. */
  readonly kinship: number;
  /** Loss (0..0.5) of an unrelated pair out of the same backgrounds. */
  readonly unrelated: number;
  readonly loss: number;
}

/**
 * Expected loss of a queen, given as a weighted set of nodes (herself; or dam and dam's mates, half each, for a
 * daughter to come), with a drone source. Throws when a background lacks its alleles.
 */
export function expectedLoss(
  pedigree: Pedigree,
  queen: DroneSource,
  drones: DroneSource,
  alleles: BackgroundAlleles,
): ExpectedLoss {
  const kinship = kinshipWithSource(pedigree, queen, drones);
  const hers = backgroundShares(pedigree, queen);
  const theirs = backgroundShares(pedigree, drones);
  let unrelated = 0;
  for (const [b, share] of hers) {
    for (const [c, other] of theirs) {
      unrelated += share * other * unrelatedLoss(allelesOf(alleles, b), allelesOf(alleles, c));
    }
  }
  return { kinship, unrelated, loss: lossFromKinship(kinship, unrelated) };
}

/** Kinship (0..1) of two weighted sets of nodes: one product with A. */
function kinshipWithSource(pedigree: Pedigree, queen: DroneSource, drones: DroneSource): number {
  const column = new Float64Array(pedigree.size);
  drones.nodes.forEach((node, k) => {
    column[node]! += drones.weights[k]! / 2;
  });
  multiplyA(pedigree, column, column);
  return queen.nodes.reduce((sum, node, k) => sum + queen.weights[k]! * column[node]!, 0);
}

/** The alleles of a background. Throws when they are not given. */
export function allelesOf(alleles: BackgroundAlleles, background: string) {
  const population = alleles.get(background);
  if (!population)
    throw new RangeError(`No number of sex alleles is given for the background '${background}'.`);
  return population;
}
