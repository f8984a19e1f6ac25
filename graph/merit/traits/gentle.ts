import { meanScore, PROTOCOL_EVALUATIONS } from './scores.ts';
import type { SeasonTrait } from './trait.ts';

/** Gentle: no smoke or protection needed, scored at inspections. */
export const gentle: SeasonTrait = {
  id: 'gentle',
  shape: 'season',
  unit: 'points, 1 to 4',
  better: 'higher',
  method: 'Mean of the gentleness scores of one season; each further evaluation makes the record weigh more.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.2 (read)',
  protocolEvaluations: PROTOCOL_EVALUATIONS,
  needsDay: false,
  score: (observation) => (observation.kind === 'inspection' ? observation.gentle : undefined),
  combine: meanScore,
  variances: {
    phenotypic: 0.25, // assumed: standard deviation of half a point inside a yard
    worker: 0.4, // assumed: above honey yield, as Bienefeld & Pirchner 1990 report for aggressiveness
    queen: 0.3, // assumed: likewise
    correlation: -0.5, // assumed: strongly negative in Bienefeld & Pirchner 1990, milder since
    permanent: 0.1, // assumed
    status: 'assumed',
    source:
      'Assumed, higher than for honey as Bienefeld & Pirchner 1990, Apidologie 21:175 (abstract read) found; 0.36 by ' +
      'queen alone for defence in Andonov et al. 2019, BMC Genet. 20:78 (abstract read)',
  },
};
