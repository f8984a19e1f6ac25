/**
 * Records of traits that are judged on a scale several times in a season.
 *
 *   mean of n evaluations: sampling variance = judging variance / n
 * Source: Büchler et al. 2013, J. Apic. Res. 52(1), sections 3.3.2 and 3.3.3 (read): scores 1 to 4, half points, three
 * to six evaluations a season; temper is their mean, swarming the lowest. Judging variance 0.1 is a project assumption
 * (a keeper's scores of one colony on two days differ by about half a point).
 */
import type { Figure } from './trait.ts';

/** Variance of one judgement around what the colony is, in squared points (assumed). */
const JUDGING_VARIANCE = 0.1;
/** Least evaluations a season by the protocol: Büchler et al. 2013, section 3.1.4 (read): three to six. */
export const PROTOCOL_EVALUATIONS = 3;

/** Mean of the scores of a season, with its judging variance. */
export function meanScore(scores: readonly number[]): Figure {
  const sum = scores.reduce((total, score) => total + score, 0);
  return { value: sum / scores.length, samplingVariance: JUDGING_VARIANCE / scores.length };
}

/** Worst score of a season: for what shows on a single day, and counts then. */
export function lowestScore(scores: readonly number[]): Figure {
  return { value: Math.min(...scores), samplingVariance: JUDGING_VARIANCE / scores.length };
}
