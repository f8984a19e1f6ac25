/**
 * Gene dropping at the sex locus: one possible history of the alleles of a pedigree, drawn from above downwards.
 *
 *   founder queen  two alleles of her background, unlike (drawn again until they are)
 *   drone          one of his mother's two
 *   mates          n drones drawn once; a daughter's father is one of them, each equally likely
 *                  (n not whole: the next lower or higher number, so that the mean of 1/number is 1/n)
 *   queen          one of her dam's two and the father's; drawn again until unlike, since an egg with two like
 *                  alleles never becomes a queen; the dam is drawn once where several are possible
 *
 * With `viable` false the last rule is left out: plain gene dropping, whose likeness is exactly the kinship.
 * Source: gene dropping, MacCluer et al. 1986, Zoo Biol. 5:147 (from memory, not re-read); sex alleles added here.
 * Cost O(nodes visited) a history. No unknowns: a compiled pedigree is complete.
 */
import { NodeKind, type Pedigree } from '../kinship/pedigree.ts';
import type { Random } from '../numerics/random.ts';
import type { DropPlan } from './drop-plan.ts';

export interface DroppedAlleles {
  /** First and second allele of each queen or founder; of a drone the first alone. */
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Draws the whole pedigree anew. */
  drop(): void;
  /** An allele of a gamete of this node: a queen, a pool, a background, a drone or a queen's mates. */
  gamete(node: number): number;
}

export interface DropOptions {
  /** Whether only heterozygous eggs become queens, as in nature. */
  readonly viable: boolean;
}

const DROP_DEFAULTS: DropOptions = { viable: true };

/** A pedigree ready for dropping; nothing is drawn before `drop()`. */
export function geneDrop(
  plan: DropPlan,
  random: Random,
  options: DropOptions = DROP_DEFAULTS,
): DroppedAlleles {
  const { pedigree, visits } = plan;
  const { kind, parentStart, parent } = pedigree;
  const first = new Int32Array(pedigree.size);
  const second = new Int32Array(pedigree.size);
  const { gamete, forget } = gameteDrawer(plan, first, second, random);
  const drop = (): void => {
    forget();
    for (const node of visits) {
      const only = parent[parentStart[node]!]!;
      if (kind[node] === NodeKind.drone) {
        first[node] = gamete(only);
        continue;
      }
      const pair = kind[node] === NodeKind.queen ? chosenPair(plan, node, random) : -1;
      do {
        first[node] = gamete(pair < 0 ? only : parent[pair]!);
        second[node] = gamete(pair < 0 ? only : parent[pair + 1]!);
      } while (options.viable && first[node] === second[node]);
    }
  };
  return { first, second, drop, gamete };
}

/** Draws an allele of a gamete of any node, from the alleles of queens and drones drawn so far. */
function gameteDrawer(plan: DropPlan, first: Int32Array, second: Int32Array, random: Random) {
  const { pedigree, cumulative, effectiveMates } = plan;
  const met = dronesMet(plan, random, (node) => gamete(node));
  let fresh = FIRST_FRESH;
  const gamete = (start: number): number => {
    for (let node = start; ; node = parentByChance(pedigree, node, random)) {
      const kind = pedigree.kind[node]!;
      if (kind === NodeKind.background) {
        const sums = cumulative.get(node)!;
        return sums.length === 0 ? fresh++ : drawn(sums, random.uniform());
      }
      if (kind === NodeKind.drone) return first[node]!;
      if (kind === NodeKind.founder || kind === NodeKind.queen) {
        return random.uniform() < 0.5 ? first[node]! : second[node]!;
      }
      if (kind === NodeKind.mates && effectiveMates[node]! > 0) return met.father(node);
    }
  };
  const forget = (): void => {
    met.forget();
    fresh = FIRST_FRESH;
  };
  return { gamete, forget };
}

/** Alleles that no other gene shares are numbered from here, above those of any finite population. */
const FIRST_FRESH = 1_000_000;

function drawn(cumulative: Float64Array, uniform: number): number {
  let allele = 0;
  while (allele < cumulative.length - 1 && uniform >= cumulative[allele]!) allele += 1;
  return allele;
}

/** One of the parents of a node, in proportion to its coefficients, which sum to 1. */
function parentByChance(
  { parentStart, parent, coefficient }: Pedigree,
  node: number,
  random: Random,
): number {
  const last = parentStart[node + 1]! - 1;
  let k = parentStart[node]!;
  if (k === last) return parent[k]!;
  for (let left = random.uniform() - coefficient[k]!; left >= 0 && k < last; left -= coefficient[k]!) k += 1;
  return parent[k]!;
}

/** Place of a dam in the parents of a queen; her mates stand next to her, with the same coefficient. */
function chosenPair({ pedigree }: DropPlan, node: number, random: Random): number {
  const start = pedigree.parentStart[node]!;
  const last = pedigree.parentStart[node + 1]! - 2;
  if (start === last) return start;
  let left = random.uniform();
  for (let k = start; k < last; k += 2) {
    left -= 2 * pedigree.coefficient[k]!;
    if (left < 0) return k;
  }
  return last;
}

/** The drones that each queen met, drawn when first asked for and kept until `forget`. */
function dronesMet(plan: DropPlan, random: Random, gamete: (node: number) => number) {
  const { pedigree, effectiveMates, slotStart, slots } = plan;
  const allele = new Int32Array(slots);
  const drawnIn = new Int32Array(slots);
  const countedIn = new Int32Array(pedigree.size);
  const count = new Int32Array(pedigree.size);
  let history = 0;
  return {
    forget(): void {
      history += 1;
    },
    father(mates: number): number {
      if (countedIn[mates] !== history) {
        countedIn[mates] = history;
        count[mates] = wholeMates(effectiveMates[mates]!, random);
      }
      const slot = slotStart[mates]! + random.integer(count[mates]!);
      if (drawnIn[slot] !== history) {
        drawnIn[slot] = history;
        allele[slot] = gamete(parentByChance(pedigree, mates, random));
      }
      return allele[slot]!;
    },
  };
}

/** A whole number of mates whose mean of 1/number is 1/`mates` (1 or more). */
export function wholeMates(mates: number, random: Random): number {
  const low = Math.floor(mates);
  if (low === mates) return low;
  const high = low + 1;
  const chanceOfLow = (1 / mates - 1 / high) / (1 / low - 1 / high);
  return random.uniform() < chanceOfLow ? low : high;
}
