/**
 * Lines that hang on one queen: lost with her, if she is lost.
 *   line of a queen = the founder at the end of her most probable dams
 * Source: the definition itself. Cost: O(queens). Unknown dams: such a queen founds a line of her own.
 */
import { NodeKind, type Pedigree } from './pedigree.ts';

export interface LineAtRisk {
  /** Id of the founder of the line. */
  readonly founder: string;
  /** Id of the one living queen who holds it. */
  readonly queen: string;
}

/** Lines with exactly one living queen, by founder id. `founderOf` gives a queen's founder, herself for one. */
export function lossOfLineWarnings(
  founderOf: (queen: string) => string,
  living: Iterable<string>,
): LineAtRisk[] {
  const holders = new Map<string, Set<string>>();
  for (const queen of living) {
    const founder = founderOf(queen);
    holders.set(founder, (holders.get(founder) ?? new Set()).add(queen));
  }
  const alone: LineAtRisk[] = [];
  for (const [founder, queens] of holders) {
    if (queens.size === 1) for (const queen of queens) alone.push({ founder, queen });
  }
  return alone.sort((a, b) => (a.founder < b.founder ? -1 : 1));
}

/** The founder of each queen by her most probable dams, ties by id: indices aligned to `queenIds`. */
export function maternalFounders(pedigree: Pedigree): Int32Array {
  const { size, kind, parentStart, parent, coefficient, queenIds, queenNode } = pedigree;
  const queenOfNode = new Int32Array(size).fill(-1);
  for (let queen = 0; queen < queenNode.length; queen++) queenOfNode[queenNode[queen]!] = queen;
  const founder = new Int32Array(queenNode.length);
  for (let node = 0; node < size; node++) {
    if (queenOfNode[node]! < 0) continue;
    let dam = -1;
    let most = 0;
    for (let k = parentStart[node]!; k < parentStart[node + 1]! && kind[node] === NodeKind.queen; k++) {
      const candidate = queenOfNode[parent[k]!]!;
      if (candidate < 0 || coefficient[k]! < most) continue;
      if (coefficient[k] === most && queenIds[candidate]! > queenIds[dam]!) continue;
      dam = candidate;
      most = coefficient[k]!;
    }
    founder[queenOfNode[node]!] = dam < 0 ? queenOfNode[node]! : founder[dam]!;
  }
  return founder;
}
