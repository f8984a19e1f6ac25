import type { SeasonTrait } from './trait.ts';

/** Honey taken in a season. What was left for the bees and what was fed is not in it. */
export const honey: SeasonTrait = {
  id: 'honey',
  shape: 'season',
  unit: 'kg a season',
  better: 'higher',
  method: 'Sum of the harvests of one season; compared inside one yard and season.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.1 (from memory)',
  protocolEvaluations: 1,
  needsDay: false,
  score: (observation) => (observation.kind === 'harvest' ? observation.kilograms : undefined),
  combine: (kilograms) => ({ value: kilograms.reduce((sum, each) => sum + each, 0), samplingVariance: 0 }),
  variances: {
    phenotypic: 64, // assumed: standard deviation of 8 kg inside a yard
    worker: 0.26, // published: Bienefeld & Pirchner 1990, Apidologie 21:175 (abstract read)
    queen: 0.15, // published: Bienefeld & Pirchner 1990, Apidologie 21:175 (abstract read)
    correlation: -0.5, // assumed: about -0.9 there, milder since
    permanent: 0.1, // assumed
    status: 'published',
    source:
      'Bienefeld & Pirchner 1990, Apidologie 21:175 (abstract read); the correlation is assumed milder than theirs',
  },
};
