import type { EachTrait } from './trait.ts';

/** Frames of bees are judged to about a tenth (assumed): variance of one log judgement. */
const JUDGING_LOG_VARIANCE = 0.01;
/** Below this many frames in autumn a ratio is mostly rounding (assumed). */
const FEWEST_AUTUMN_FRAMES = 2;

/** How much of its autumn strength a living colony has in spring. */
export const winterStrength: EachTrait = {
  id: 'winter-strength',
  shape: 'each',
  unit: 'log of spring over autumn frames of bees',
  better: 'higher',
  method:
    'Frames of bees at the end of winter over frames before it, as a logarithm, of colonies alive in spring; dead ones ' +
    'count in winter survival.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.7 (read): overwintering index',
  needsDay: false,
  figure: (observation) => {
    if (observation.kind !== 'winter' || !observation.alive) return undefined;
    const { autumnFramesOfBees: autumn, springFramesOfBees: spring } = observation;
    if (autumn === undefined || spring === undefined) return undefined;
    if (autumn < FEWEST_AUTUMN_FRAMES || spring <= 0) {
      const sentence = `${autumn} frames in autumn and ${spring} in spring: too few for a ratio to mean anything.`;
      return { setAside: 'too-weak-to-tell', sentence };
    }
    return { value: Math.log(spring / autumn), samplingVariance: 2 * JUDGING_LOG_VARIANCE };
  },
  variances: {
    phenotypic: 0.09, // assumed: standard deviation of about 30 % inside a yard
    worker: 0.1, // assumed, after winter food use 0.11 +- 0.09: Maucourt et al. 2020, Insects 11:587 (abstract read)
    queen: 0.1, // assumed
    correlation: -0.3, // assumed
    permanent: 0.05, // assumed
    status: 'assumed',
    source:
      'Assumed, after winter food use 0.11 +- 0.09 in Maucourt et al. 2020, Insects 11:587 (abstract read)',
  },
};
