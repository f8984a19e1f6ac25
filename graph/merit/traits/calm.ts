import { meanScore, PROTOCOL_EVALUATIONS } from './scores.ts';
import type { SeasonTrait } from './trait.ts';

/** Calm on the comb: the bees stay where they sit, scored at inspections. */
export const calm: SeasonTrait = {
  id: 'calm',
  shape: 'season',
  unit: 'points, 1 to 4',
  better: 'higher',
  method: 'Mean of the calmness scores of one season; each further evaluation makes the record weigh more.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.2 (read)',
  protocolEvaluations: PROTOCOL_EVALUATIONS,
  needsDay: false,
  score: (observation) => (observation.kind === 'inspection' ? observation.calm : undefined),
  combine: meanScore,
  variances: {
    phenotypic: 0.25, // assumed: standard deviation of half a point inside a yard
    worker: 0.4, // assumed: above honey yield, as Bienefeld & Pirchner 1990 report for calmness
    queen: 0.3, // assumed: likewise
    correlation: -0.5, // assumed: strongly negative in Bienefeld & Pirchner 1990, milder since
    permanent: 0.1, // assumed
    status: 'assumed',
    source:
      'Assumed, higher than for honey as Bienefeld & Pirchner 1990, Apidologie 21:175 (abstract read) found',
  },
};
