import type { TraitObservation } from '../observations.ts';
import type { PairTrait } from './trait.ts';

/** Frames of bees are judged to about a tenth (assumed): variance of one log judgement. */
const JUDGING_LOG_VARIANCE = 0.01;
const DAYS_A_WEEK = 7;

/** Frames of bees seen: at the end of winter or at an inspection. */
function frames(observation: TraitObservation): number | undefined {
  if (observation.kind === 'winter') return observation.alive ? observation.springFramesOfBees : undefined;
  return observation.kind === 'inspection' ? observation.framesOfBees : undefined;
}

/** How fast a colony grows in spring, from the end of winter to the last look at most ten weeks later. */
export const springBuildUp: PairTrait = {
  id: 'spring-build-up',
  shape: 'pair',
  unit: 'log of frames of bees gained a week',
  better: 'higher',
  method:
    'From the first frames of bees of the year (end of winter or first inspection) to the last at three to ten weeks ' +
    'later: logarithm of their ratio a week.',
  protocol:
    'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.7 (read): spring development; the rate is ours',
  needsDay: true,
  usable: (observation) => (frames(observation) ?? 0) > 0,
  daysApart: [21, 70],
  join: (earlier, later, days) => ({
    value: (Math.log(frames(later)! / frames(earlier)!) / days) * DAYS_A_WEEK,
    samplingVariance: 2 * JUDGING_LOG_VARIANCE * (DAYS_A_WEEK / days) ** 2,
  }),
  variances: {
    phenotypic: 0.0064, // assumed: standard deviation of 8 % a week inside a yard
    worker: 0.3, // published as one figure, 0.30 +- 0.14: Maucourt et al. 2020, Insects 11:587 (abstract read)
    queen: 0.2, // assumed
    correlation: -0.5, // assumed
    permanent: 0.05, // assumed
    status: 'published',
    source: 'Maucourt et al. 2020, Insects 11:587 (abstract read): 0.30 +- 0.14; the queen part is assumed',
  },
};
