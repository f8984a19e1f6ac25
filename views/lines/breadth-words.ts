import type { FounderNumbers } from '../../graph/kinship/founder-numbers.ts';
import type { MeanKinship } from '../../graph/kinship/mean-kinship.ts';
import { count } from '../parts/words.ts';

export interface BreadthFigures {
  readonly candidates: readonly string[];
  readonly founders: FounderNumbers | undefined;
  readonly meanKinship: MeanKinship | undefined;
}

/** How broad the living stock is, in a sentence and in what stands behind it; undefined without laying queens. */
export function breadthWords({
  candidates,
  founders,
  meanKinship,
}: BreadthFigures): { readonly summary: string; readonly details: readonly string[] } | undefined {
  if (!founders || !meanKinship || candidates.length === 0) return undefined;
  const worth = founders.founderGenomes ?? founders.founders;
  const lines = `${founders.lines.toFixed(1)} equal lines`;
  return {
    summary: `Worth ${lines}; mean kinship ${meanKinship.ofSet.toFixed(3)}`,
    details: [
      `Were the ${count(candidates.length, 'queen')} who lay now spread evenly over their lines, ${founders.lines.toFixed(1)} lines would hold them as well as those they come from.`,
      ...(worth === undefined
        ? []
        : [
            `Drones counted, the genes of the living are worth those of ${worth.toFixed(1)} unrelated founders (founder genome equivalents, Lacy 1989).`,
          ]),
      `Two genes drawn at random from the living are copies of one with a probability of ${meanKinship.ofSet.toFixed(3)}: the inbreeding to expect if they mated among themselves by chance.`,
    ],
  };
}
