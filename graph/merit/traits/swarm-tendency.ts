import { lowestScore, PROTOCOL_EVALUATIONS } from './scores.ts';
import type { SeasonTrait } from './trait.ts';

/** Swarm tendency: 4 no swarm cells, 1 swarmed or kept from it only by much work. */
export const swarmTendency: SeasonTrait = {
  id: 'swarm-tendency',
  shape: 'season',
  unit: 'points, 1 (swarmed) to 4 (no cells)',
  better: 'higher',
  method: 'Lowest swarming score of the season; cells of a supersedure are not counted.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.3 (read)',
  protocolEvaluations: PROTOCOL_EVALUATIONS,
  needsDay: false,
  score: (observation) => (observation.kind === 'inspection' ? observation.swarmTendency : undefined),
  combine: lowestScore,
  variances: {
    phenotypic: 0.8, // assumed: lowest scores spread over the whole scale
    worker: 0.15, // assumed
    queen: 0.34, // published, by a model of the queen alone: Andonov et al. 2019, BMC Genet. 20:78 (abstract read)
    correlation: -0.3, // assumed
    permanent: 0.05, // assumed
    status: 'published',
    source:
      'Andonov et al. 2019, BMC Genet. 20:78 (abstract read): 0.34 by queen alone; the worker part is assumed',
  },
};
