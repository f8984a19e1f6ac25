/**
 * One history of a breeding policy, season after season: winter, choice, daughters, mating.
 *
 *   winter    a colony is lost when rho (a - a0)/sqrt V + sqrt(1 - rho^2) z < Phi^-1(loss)
 *   choice    by a + e, e ~ N(0, V (1 - r)/r), drawn anew each season; by lot when r = 0 or V = 0
 *   daughter  a = (a_dam/2 + m) + drone,  m ~ N(0, (1 - F_dam) V/4);  a drone's genes are one gamete of his mother,
 *             drawn once and given whole to every daughter; of the background N(mu/2, V/2)
 *   daughters begun come to lay with chance `success`; as many as there is room for are taken, by lot; they fill
 *   empty colonies first, then stand in for the queens of lowest index, up to the share to be requeened
 *   (the founders are taken to have met drones of one another and of the background in the same shares)
 *   they mate at once, with drones of the colonies that came through winter and of the background
 *
 * a: true merit of a queen (worker and queen effect together); a0: mean of the founders; rho: winterOnMerit; r:
 * reliability; V: additive variance of the background, many genes of small effect (infinitesimal model); F: inbreeding
 * from the ledger; z: standard normal. Sex alleles are true alleles: a queen is heterozygous, new alleles come in with
 * background drones alone. Left out: loss of vigour by inbreeding, weak colonies through poor brood, queens changed
 * unseen, linkage, mutation; the keeper is told that it shows tendencies, not forecasts.
 * Sources: Bulmer 1971, Am. Nat. 105:201 (infinitesimal model), Kempthorne 1957, An Introduction to Genetic
 * Statistics (haploid fathers) (both from memory, not re-read). Cost a season: O(colonies x entries so far).
 */

import type { Random } from '../../numerics/random.ts';
import { normalQuantile } from '../../numerics/special.ts';
import { bear, drawFounders, type History, mate } from './history.ts';

/** Plays one history; `record` gets the living queens at the start (season 0) and at the end of each season. */
export function simulate(
  history: History,
  random: Random,
  record: (season: number, living: readonly number[]) => void,
): void {
  const { input, value } = history;
  drawFounders(history, random);
  let living = input.founders.map((_, entry) => entry);
  for (const queen of living) mate(history, queen, living, random);
  const start = living.reduce((sum, queen) => sum + value[queen]!, 0) / living.length;
  record(0, living);
  for (let season = 1; season <= input.seasons; season += 1) {
    living = overSeason(history, throughWinter(history, living, start, random), random);
    record(season, living);
  }
}

/** The colonies that come through winter. */
function throughWinter(history: History, living: readonly number[], start: number, random: Random): number[] {
  const { policy, variance } = history.input;
  if (policy.winterLoss <= 0) return [...living];
  if (policy.winterLoss >= 1) return [];
  const limit = normalQuantile(policy.winterLoss);
  const slope = variance > 0 ? policy.winterOnMerit / Math.sqrt(variance) : 0;
  const rest = Math.sqrt(1 - (variance > 0 ? policy.winterOnMerit ** 2 : 0));
  return living.filter((queen) => slope * (history.value[queen]! - start) + rest * random.normal() >= limit);
}

/** The queens at the end of a season, from those that came through winter. */
function overSeason(history: History, survivors: readonly number[], random: Random): number[] {
  const { policy } = history.input;
  if (survivors.length === 0) return [];
  const ranked = rank(history, survivors, random);
  const breeders = chosen(history, ranked);
  const free = Math.max(0, policy.colonies - survivors.length);
  const replaceable = Math.round(policy.requeened * survivors.length);
  const dams = begun(history, breeders, free + replaceable, random);
  const mothers = policy.droneMothers === 'all' ? survivors : breeders;
  const daughters = dams.map((dam) => bear(history, dam, random));
  for (const daughter of daughters) mate(history, daughter, mothers, random);
  const replaced = Math.max(0, daughters.length - free);
  return [...ranked.slice(0, survivors.length - replaced), ...daughters].sort((a, b) => a - b);
}

/** The queens by falling index, as it is estimated this season. */
function rank({ input, value }: History, queens: readonly number[], random: Random): number[] {
  const { variance } = input;
  const { reliability } = input.policy;
  const byLot = reliability === 0 || variance === 0;
  const error = byLot ? 1 : Math.sqrt((variance * (1 - reliability)) / reliability);
  const estimate = new Map(
    queens.map((queen) => [queen, (byLot ? 0 : value[queen]!) + error * random.normal()]),
  );
  return [...queens].sort((a, b) => estimate.get(b)! - estimate.get(a)!);
}

function chosen({ input, line }: History, ranked: readonly number[]): number[] {
  const { breeders, mostPerLine = Infinity } = input.policy;
  const perLine = new Map<number, number>();
  const found: number[] = [];
  for (const queen of ranked) {
    if (found.length === breeders) break;
    const already = perLine.get(line[queen]!) ?? 0;
    if (already >= mostPerLine) continue;
    perLine.set(line[queen]!, already + 1);
    found.push(queen);
  }
  return found;
}

/** The dams of the daughters that come to lay and find room, by lot among all begun. */
function begun({ input }: History, breeders: readonly number[], room: number, random: Random): number[] {
  const { daughtersEach, success } = input.policy;
  const dams: number[] = [];
  for (const dam of breeders) {
    const laying = random.binomial(daughtersEach, success);
    for (let k = 0; k < laying; k += 1) dams.push(dam);
  }
  const taken = Math.min(room, dams.length);
  for (let k = 0; k < taken; k += 1) {
    const other = k + random.integer(dams.length - k);
    [dams[k], dams[other]] = [dams[other]!, dams[k]!];
  }
  return dams.slice(0, taken);
}
