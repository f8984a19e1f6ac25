/**
 * A named drone source (a pool, drone mothers, single drones) as weights on nodes of the compiled pedigree.
 *
 *   A[x][source] = sum over nodes j of weight_j A[x][j]
 *
 * Source: the structural nodes of the pedigree. Cost O(names). Unknown ids throw: they come from our own lists.
 */
import type { Pedigree } from '../kinship/pedigree.ts';
import type { MatingInput, Share } from '../kinship/pedigree-input.ts';

export interface DroneSource {
  readonly nodes: Int32Array;
  /** Share (0..1] of each node; they sum to 1. */
  readonly weights: Float64Array;
}

/** The nodes behind a mating. Throws on an unknown id or when the shares do not sum to 1. */
export function droneSource(pedigree: Pedigree, mating: MatingInput): DroneSource {
  const pairs = pairsOf(pedigree, mating).filter(([, weight]) => weight > 0);
  const sum = pairs.reduce((total, [, weight]) => total + weight, 0);
  if (Math.abs(sum - 1) > 1e-9) throw new RangeError(`The shares of a drone source sum to ${sum}, not to 1.`);
  return {
    nodes: Int32Array.from(pairs, ([node]) => node),
    weights: Float64Array.from(pairs, ([, weight]) => weight),
  };
}

/** Several sources mixed: `share` of each, summing to 1. Nodes named twice are added up. */
export function mixSources(
  parts: readonly { readonly source: DroneSource; readonly share: number }[],
): DroneSource {
  const weight = new Map<number, number>();
  for (const { source, share } of parts) {
    source.nodes.forEach((node, k) => {
      weight.set(node, (weight.get(node) ?? 0) + share * source.weights[k]!);
    });
  }
  const nodes = [...weight.keys()].sort((a, b) => a - b);
  return { nodes: Int32Array.from(nodes), weights: Float64Array.from(nodes, (node) => weight.get(node)!) };
}

/** Structural node of a queen. Throws on an unknown id. */
export function queenNodeOf(pedigree: Pedigree, queen: string): number {
  const index = pedigree.queenIndex.get(queen);
  if (index === undefined) throw new RangeError(`The pedigree holds no queen '${queen}'.`);
  return pedigree.queenNode[index]!;
}

/** Structural node of a queen's mates; undefined when no mating of hers is recorded. */
export function matesNodeOf(pedigree: Pedigree, queen: string): number | undefined {
  const index = pedigree.queenIndex.get(queen);
  if (index === undefined) throw new RangeError(`The pedigree holds no queen '${queen}'.`);
  const node = pedigree.matesNode[index]!;
  return node < 0 ? undefined : node;
}

function pairsOf(pedigree: Pedigree, mating: MatingInput): (readonly [number, number])[] {
  switch (mating.kind) {
    case 'pool':
      return [[named(pedigree.poolNode, mating.pool, 'drone pool'), 1]];
    case 'drones':
      return mating.drones.map(({ of, share }) => [named(pedigree.droneNode, of, 'drone'), share]);
    case 'drone-mothers': {
      const background = ({ of, share }: Share): readonly [number, number] => [
        named(pedigree.backgroundNode, of, 'background'),
        share,
      ];
      const mother = ({ of, share }: Share): readonly [number, number] => [queenNodeOf(pedigree, of), share];
      return [...mating.droneMothers.map(mother), ...mating.backgrounds.map(background)];
    }
  }
}

function named(nodes: ReadonlyMap<string, number>, id: string, what: string): number {
  const node = nodes.get(id);
  if (node === undefined) throw new RangeError(`The pedigree holds no ${what} '${id}'.`);
  return node;
}
