import { spoiltByTreatment } from './after-treatment.ts';
import type { EachTrait } from './trait.ts';

/** Added to a count so that none found has a logarithm: Haldane 1956, Ann. Hum. Genet. 20:309 (from memory). */
const HALF_A_MITE = 0.5;

/** Mites on the bees, or fallen a day, at a count that no treatment spoilt. */
export const miteLevel: EachTrait = {
  id: 'mite-level',
  shape: 'each',
  unit: 'log of mites per bee (or per day)',
  better: 'lower',
  method:
    'Logarithm of mites per bee (wash, sugar shake) or per day (natural drop), half a mite added; compared inside one ' +
    'yard, season and method. Counts under a treatment or within 42 days of its end (our assumption) are set aside.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.4 (read); the logarithm is ours',
  needsDay: true,
  alike: (observation) => (observation.kind === 'mite-count' ? observation.sample.method : ''),
  figure: (observation) => {
    if (observation.kind !== 'mite-count') return undefined;
    const { sample } = observation;
    const exposure = sample.method === 'natural-drop' ? sample.days : sample.bees;
    return (
      spoiltByTreatment(observation) ?? {
        value: Math.log((sample.mites + HALF_A_MITE) / exposure),
        // Variance of the log of a Poisson count; a wash of 100 bees so weighs less than one of 300.
        samplingVariance: 1 / (sample.mites + HALF_A_MITE),
      }
    );
  },
  variances: {
    phenotypic: 0.6, // assumed: standard deviation of a factor of about two inside a yard
    worker: 0.2, // between 0.13, Padilha et al. 2013, Genet. Mol. Biol. 36:207, and 0.44 of Maucourt et al. 2020
    queen: 0.1, // assumed
    correlation: -0.5, // assumed
    permanent: 0.1, // assumed
    status: 'published',
    source:
      'Between 0.13 (Padilha et al. 2013, Genet. Mol. Biol. 36:207) and 0.44 +- 0.56 (Maucourt et al. 2020, Insects ' +
      '11:587; abstracts read); Guichard et al. 2020, Apidologie 51:876 (abstract read) found none',
  },
};
