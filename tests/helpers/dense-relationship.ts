/**
 * The plain, slow twin of the compiled pedigree: a dense A by the tabular method, straight from the facts, by ids,
 * sharing no code with the fast path. For small pedigrees in tests only.
 * Rule for a new node i with parents p and coefficients c: A[i][x] = sum c_p A[p][x]; A[i][i] by the kind of node.
 */
import type { MatingInput, PedigreeInput, QueenInput } from '../../graph/kinship/pedigree-input.ts';

type Parents = readonly (readonly [name: string, coefficient: number])[];

export interface DenseRelationship {
  /** A of two names: 'queen:Q1', 'mates:Q1', 'pool:P', 'drone:D', 'background:B'. */
  readonly at: (a: string, b: string) => number;
  readonly names: readonly string[];
}

export function denseRelationship(input: PedigreeInput): DenseRelationship {
  const names: string[] = [];
  const place = new Map<string, number>();
  const matrix: number[][] = [];
  const at = (a: string, b: string): number => matrix[place.get(a)!]![place.get(b)!]!;
  const square = (parents: Parents): number =>
    parents.reduce(
      (sum, [p, cp]) => sum + parents.reduce((inner, [q, cq]) => inner + cp * cq * at(p, q), 0),
      0,
    );
  const add = (name: string, parents: Parents, own: (square: number) => number): void => {
    const row = names.map((x) => parents.reduce((sum, [p, c]) => sum + c * at(p, x), 0));
    const diagonal = own(square(parents));
    names.push(name);
    place.set(name, row.length);
    matrix.forEach((other, k) => {
      other.push(row[k]!);
    });
    matrix.push([...row, diagonal]);
  };

  const queenNamed = new Map(input.queens.map((queen) => [queen.id, queen]));
  const listParents = (
    lists: Extract<MatingInput, { kind: 'drone-mothers' }> | PedigreeInput['pools'][number],
  ): Parents => [
    ...lists.droneMothers.map(({ of, share }) => [ensureQueen(of), share] as const),
    ...lists.backgrounds.map(({ of, share }) => [`background:${of}`, share] as const),
  ];
  const ensurePool = (id: string): string => {
    const name = `pool:${id}`;
    if (!place.has(name)) {
      const parents = listParents(input.pools.find((pool) => pool.id === id)!);
      add(name, parents, (q) => q);
    }
    return name;
  };
  const ensureDrone = (id: string): string => {
    const name = `drone:${id}`;
    if (!place.has(name)) {
      const mother = ensureQueen(input.drones.find((drone) => drone.id === id)!.mother);
      add(name, [[mother, 1]], () => 2);
    }
    return name;
  };
  const addMates = (name: string, dam: QueenInput, mating: MatingInput): string => {
    if (place.has(name)) return name;
    const n = dam.effectiveMates;
    ensureQueen(dam.id);
    if (mating.kind === 'drones') {
      const parents = mating.drones.map(({ of, share }) => [ensureDrone(of), share] as const);
      add(name, parents, (q) => q);
    } else {
      const parents = mating.kind === 'pool' ? [[ensurePool(mating.pool), 1] as const] : listParents(mating);
      add(name, parents, (q) => 2 / n + (1 - 1 / n) * q);
    }
    return name;
  };
  const ensureMates = (dam: QueenInput, father?: MatingInput): string => {
    if (father) return addMates(`pair:${dam.id}:${JSON.stringify(father)}`, dam, father);
    return addMates(`mates:${dam.id}`, dam, dam.mating!);
  };
  const ensureQueen = (id: string): string => {
    const name = `queen:${id}`;
    if (place.has(name)) return name;
    const { dams, background, father } = queenNamed.get(id)!;
    if (dams.length === 0) {
      const theta = input.backgrounds.find((one) => one.id === background)!.kinship;
      add(name, [[`background:${background}`, 1]], () => 1 + theta);
      return name;
    }
    const pairs = dams.map(({ of, share }) => {
      const dam = ensureQueen(of);
      return { dam, mates: ensureMates(queenNamed.get(of)!, father), share };
    });
    const parents = pairs.flatMap(({ dam, mates, share }) => [
      [dam, share / 2] as const,
      [mates, share / 2] as const,
    ]);
    const inbreeding = pairs.reduce((sum, { dam, mates, share }) => sum + (share * at(dam, mates)) / 2, 0);
    add(name, parents, () => 1 + inbreeding);
    return name;
  };

  for (const { id, kinship } of input.backgrounds) add(`background:${id}`, [], () => 2 * kinship);
  for (const { id } of input.queens) ensureQueen(id);
  for (const { id } of input.pools) ensurePool(id);
  for (const { id } of input.drones) ensureDrone(id);
  for (const queen of input.queens) if (queen.mating) ensureMates(queen);
  return { at, names: names.filter((name) => !name.startsWith('pair:')) };
}
