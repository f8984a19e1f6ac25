import type { Figure, SeasonTrait } from './trait.ts';

/** Two judgements of one comb differ by about ten points (assumed). */
const JUDGING_VARIANCE = 50;

function meanPercent(percents: readonly number[]): Figure {
  const sum = percents.reduce((total, percent) => total + percent, 0);
  return { value: sum / percents.length, samplingVariance: JUDGING_VARIANCE / percents.length };
}

/** How full a patch of brood is: gaps come of inbreeding, disease, hygiene and a failing queen alike. */
export const broodPattern: SeasonTrait = {
  id: 'brood-pattern',
  shape: 'season',
  unit: 'percent of cells in a full patch that hold brood',
  better: 'higher',
  method: 'Mean of the judged percentages of one season.',
  protocol: 'Common practice, no source',
  protocolEvaluations: 2,
  needsDay: false,
  score: (observation) => (observation.kind === 'inspection' ? observation.broodPattern : undefined),
  combine: meanPercent,
  variances: {
    phenotypic: 100, // assumed: standard deviation of ten points inside a yard
    worker: 0.1, // assumed: no published estimate found
    queen: 0.2, // assumed
    correlation: -0.3, // assumed
    permanent: 0.1, // assumed
    status: 'assumed',
    source: 'Assumed; no published estimate found',
  },
};
