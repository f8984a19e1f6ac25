/**
 * Sex alleles of a population, and how often an unrelated drone carries one of the queen's two.
 *
 * An egg that gets the same sex allele from queen and drone becomes a diploid drone, which the workers remove:
 * a hole in the brood. Every queen is heterozygous, or she would not be one.
 *
 *   queens of frequencies p, drones of frequencies q, allele i the same allele in both:
 *   loss(p, q) = sum over i < j of 2 p_i p_j (q_i + q_j)/2 / (1 - sum p_i^2)
 *              = sum over i of p_i (1 - p_i) q_i / (1 - sum p_i^2)
 *   k equally frequent alleles in both: loss = 1/k
 *   sets of k and m equally frequent alleles with s in common: loss = s / (k m)
 *
 * loss is the expected share (0..1) of fertilised eggs lost; a given drone matches with probability 2 loss.
 * Sources: Adams et al. 1977, Genetics 86:583; Page 1980, Genetics 96:263 (both from memory, not re-read); the
 * condition on heterozygous queens derived here. Cost O(alleles).
 */

/** `count` equally frequent alleles (Infinity: no two genes alike), or the frequency of each allele by number. */
export type AllelePopulation = { readonly count: number } | { readonly frequencies: readonly number[] };

/** The sex alleles of each background, by id. Allele 0 is the same allele everywhere, and so on. */
export type BackgroundAlleles = ReadonlyMap<string, AllelePopulation>;

/** Expected loss (0..1) between an unrelated queen of one population and a drone of another. */
export function unrelatedLoss(queens: AllelePopulation, drones: AllelePopulation): number {
  checkPopulation(queens);
  checkPopulation(drones);
  if ('count' in queens && 'count' in drones) {
    return lossWithCommonAlleles(queens.count, drones.count, Math.min(queens.count, drones.count));
  }
  if (('count' in queens && queens.count === Infinity) || ('count' in drones && drones.count === Infinity))
    return 0;
  const p = frequencies(queens);
  const q = frequencies(drones);
  const heterozygous = 1 - p.reduce((sum, each) => sum + each * each, 0);
  return p.reduce((sum, each, allele) => sum + each * (1 - each) * (q[allele] ?? 0), 0) / heterozygous;
}

/** Loss (0..1) between sets of `first` and `second` equally frequent alleles of which `common` are in both. */
function lossWithCommonAlleles(first: number, second: number, common: number): number {
  if (!(common >= 0 && common <= Math.min(first, second))) {
    throw new RangeError(
      `Populations of ${first} and ${second} sex alleles cannot have ${common} in common.`,
    );
  }
  return first === Infinity || second === Infinity ? 0 : common / (first * second);
}

/** The frequency of each allele of a population of a finite number of them. */
export function frequencies(population: AllelePopulation): readonly number[] {
  if ('frequencies' in population) return population.frequencies;
  return new Array<number>(population.count).fill(1 / population.count);
}

/** Throws unless there are two alleles or more and their frequencies sum to 1. */
export function checkPopulation(population: AllelePopulation): void {
  if ('count' in population) {
    const { count } = population;
    if (count === Infinity || (Number.isInteger(count) && count >= 2)) return;
    throw new RangeError(`A population needs a whole number of sex alleles, 2 or more, and has ${count}.`);
  }
  const sum = population.frequencies.reduce((total, each) => total + each, 0);
  const fits = population.frequencies.every((each) => each >= 0 && each < 1) && Math.abs(sum - 1) < 1e-9;
  if (!fits)
    throw new RangeError(`Frequencies of sex alleles lie in 0..1 and sum to 1; these sum to ${sum}.`);
}
