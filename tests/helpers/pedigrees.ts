/**
 * Tiny named pedigrees. In the drawings a queen stands over her daughters, x is a mating, and what follows it
 * are the drones: 'sons of Q' means many drones of Q, 'd' one drone.
 */
import type { MatingInput, PedigreeInput, QueenInput, Share } from '../../graph/kinship/pedigree-input.ts';

export const BASE = 'base';

/** Drones of these queens and backgrounds, with shares; `BASE` is a background of unrelated bees. */
export function sonsOf(shares: Readonly<Record<string, number>>): MatingInput {
  const list = Object.entries(shares).map(([of, share]): Share => ({ of, share }));
  return {
    kind: 'drone-mothers',
    droneMothers: list.filter(({ of }) => of !== BASE),
    backgrounds: list.filter(({ of }) => of === BASE),
  };
}

export const unrelatedDrones: MatingInput = sonsOf({ [BASE]: 1 });

export const oneDrone = (drone: string): MatingInput => ({
  kind: 'drones',
  drones: [{ of: drone, share: 1 }],
});

export function founder(id: string, mating?: MatingInput, effectiveMates = 12): QueenInput {
  return { id, dams: [], background: BASE, effectiveMates, ...(mating ? { mating } : {}) };
}

export function daughter(id: string, dam: string, mating?: MatingInput, effectiveMates = 12): QueenInput {
  return {
    id,
    dams: [{ of: dam, share: 1 }],
    background: '',
    effectiveMates,
    ...(mating ? { mating } : {}),
  };
}

export function pedigreeOf(
  queens: readonly QueenInput[],
  drones: Readonly<Record<string, string>> = {},
  theta = 0,
): PedigreeInput {
  return {
    backgrounds: [{ id: BASE, kinship: theta }],
    pools: [],
    drones: Object.entries(drones).map(([id, mother]) => ({ id, mother })),
    queens,
  };
}

/**
 *        D x drones of the base, n of them, equally used
 *        |\
 *        A B
 */
export const sisters = (mates: number): PedigreeInput =>
  pedigreeOf([founder('D', unrelatedDrones, mates), daughter('A', 'D'), daughter('B', 'D')]);

/**
 *   S              S' (another founder)
 *   d              the one drone of A and B, a son of S
 *   |
 *   D x d
 *   |\
 *   A B            super-sisters
 */
export const superSisters: PedigreeInput = pedigreeOf(
  [founder('S'), founder('D', oneDrone('d')), daughter('A', 'D'), daughter('B', 'D')],
  { d: 'S' },
);

/**
 *   S               two drones of one mother
 *   d e
 *   D x d and e
 *   |   \
 *   A    B          A's father is d, B's is e
 */
export const sistersByBrothers: PedigreeInput = pedigreeOf(
  [
    founder('S'),
    founder('D'),
    { ...daughter('A', 'D'), father: oneDrone('d') },
    { ...daughter('B', 'D'), father: oneDrone('e') },
  ],
  { d: 'S', e: 'S' },
);

/** The same with drones of two unrelated mothers. */
export const halfSisters: PedigreeInput = pedigreeOf(
  [
    founder('S'),
    founder('U'),
    founder('D'),
    { ...daughter('A', 'D'), father: oneDrone('d') },
    { ...daughter('B', 'D'), father: oneDrone('e') },
  ],
  { d: 'S', e: 'U' },
);

/**
 *   Q0 x ?          each queen has one daughter, who heads the next generation;
 *   Q1 x ?          `met` says what the queen of generation t met
 *   ...
 */
export function dynasty(
  generations: number,
  met: (generation: number) => MatingInput,
  mates = 12,
  drones: Readonly<Record<string, string>> = {},
): PedigreeInput {
  const name = (t: number): string => `Q${t}`;
  const queens = [founder('S')];
  for (let t = 0; t < generations; t++) {
    queens.push(t === 0 ? founder(name(0), met(0), mates) : daughter(name(t), name(t - 1), met(t), mates));
  }
  return pedigreeOf(queens, drones);
}
