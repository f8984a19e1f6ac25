import type { Pedigree } from '../kinship/pedigree.ts';
import type { Reason } from './traits/trait.ts';

/** Why a queen's records cannot be used: no place in the pedigree, or no mating. */
export function refusal(pedigree: Pedigree): (queen: string) => Reason | undefined {
  return (queen) => {
    const q = pedigree.queenIndex.get(queen);
    if (q === undefined) {
      return { setAside: 'not-in-pedigree', sentence: 'The queen has no place in the pedigree yet.' };
    }
    if (pedigree.matesNode[q]! >= 0) return undefined;
    const sentence = 'Nobody said which drones the queen met, so half of what her workers are is unknown.';
    return { setAside: 'mating-unknown', sentence };
  };
}
