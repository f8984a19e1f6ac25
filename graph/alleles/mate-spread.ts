/**
 * The spread of brood viability between queens who met n drones each, when any drone matches with one chance.
 *
 *   m matched of n mates ~ Binomial(n, 2 L)      L: expected loss; 2 L: chance that a drone matches
 *   viability = 1 - m/(2n)                       each matched drone loses half of his own brood
 *   mean 1 - L, variance (2L)(1 - 2L)/(4n), P(no match) = (1 - 2L)^n
 *
 * Mates count alike here; the pedigree's gene dropping (viability.ts) also knows that drones of one mother, or of
 * a pool of few mothers, match together. Sources: Mackensen 1951, J. Econ. Entomol. 44:640; Woyke 1963, J. Apic.
 * Res. 2:19; Page 1980, Genetics 96:263 (from memory, not re-read but Woyke's abstract). Cost O(n).
 */

export interface MateSpread {
  /** Expected viability (0..1) and its standard deviation between queens. */
  readonly mean: number;
  readonly standardDeviation: number;
  /** Chance (0..1) that not one mate matches. */
  readonly noMatch: number;
  /** Chance of m = 0, 1 .. n matched mates, and the viability each of them leaves. */
  readonly outcomes: readonly MatchOutcome[];
}

export interface MatchOutcome {
  readonly matched: number;
  readonly probability: number;
  readonly viability: number;
}

/** `loss`: expected loss, 0..0.5. `mates`: whole number of drones, 1 or more. */
export function mateSpread(loss: number, mates: number): MateSpread {
  if (!(loss >= 0 && loss <= 0.5)) throw new RangeError(`Expected brood loss lies in 0..0.5, not ${loss}.`);
  if (!(Number.isInteger(mates) && mates >= 1)) throw new RangeError(`${mates} is no number of mates.`);
  const match = 2 * loss;
  const outcomes: MatchOutcome[] = [];
  let ways = 1;
  for (let matched = 0; matched <= mates; matched += 1) {
    const probability = ways * match ** matched * (1 - match) ** (mates - matched);
    outcomes.push({ matched, probability, viability: 1 - matched / (2 * mates) });
    ways *= (mates - matched) / (matched + 1);
  }
  return {
    mean: 1 - loss,
    standardDeviation: Math.sqrt((match * (1 - match)) / (4 * mates)),
    noMatch: (1 - match) ** mates,
    outcomes,
  };
}

/** The viability that a share `probability` (0..1) of queens stays at or below. */
export function viabilityQuantile(spread: MateSpread, probability: number): number {
  let below = 0;
  for (let k = spread.outcomes.length - 1; k > 0; k -= 1) {
    below += spread.outcomes[k]!.probability;
    if (below >= probability) return spread.outcomes[k]!.viability;
  }
  return 1;
}
