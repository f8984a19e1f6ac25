/**
 * The gain of one round of choosing dams, against the expected order statistics of the normal distribution.
 *
 * The best 4 of 15 stand, in standard deviations, at 1.73591, 1.24794, 0.94769 and 0.71488 on average: Harter 1961,
 * Expected values of normal order statistics, Biometrika 48:151 (from memory, not re-read; confirmed by numerical
 * integration). The response of the daughters is half of i sqrt(r) sigma, the drones being of the background: the
 * breeder's equation, Falconer & Mackay 1996, Introduction to Quantitative Genetics, chapter 11 (from memory).
 */
import { describe, expect, it } from 'vitest';
import { lookAhead } from '../../graph/choice/index.ts';

const INTENSITY = (1.73591 + 1.24794 + 0.94769 + 0.71488) / 4;

describe('the gain of choosing the best 4 of 15 dams', () => {
  it.each([0.25, 0.5, 1])('is half of i sqrt(r) sigma in their daughters (reliability %d)', (reliability) => {
    const replicates = 4_000;
    const found = lookAhead({
      policy: {
        colonies: 15,
        breeders: 4,
        daughtersEach: 30,
        success: 1,
        requeened: 1,
        ownDrones: 0,
        droneMothers: 'all',
        mates: 12,
        winterLoss: 0,
        winterOnMerit: 0,
        reliability,
      },
      founders: Array.from({ length: 15 }, (_, k) => ({ line: String(k) })),
      background: { merit: 0, kinship: 0, sexAlleles: 20 },
      variance: 4,
      seasons: 1,
      replicates,
      seed: 11,
    });
    if (!found.ok) throw new Error('The policy is playable.');
    const { mean, low, high } = found.seasons[1]!.gain!;
    const error = (high - low) / 3.29 / Math.sqrt(replicates);
    expect(Math.abs(mean - (INTENSITY * Math.sqrt(reliability) * 2) / 2)).toBeLessThan(4 * error);
  });
});
