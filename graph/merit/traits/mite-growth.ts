import type { MiteCountObservation, TraitObservation } from '../observations.ts';
import { spoiltByTreatment } from './after-treatment.ts';
import type { PairTrait } from './trait.ts';

/** Added to a count so that none found has a logarithm: Haldane 1956, Ann. Hum. Genet. 20:309 (from memory). */
const HALF_A_MITE = 0.5;
/** Growth is told a month, so that its variance is not a tiny number. */
const DAYS_A_MONTH = 30;

const isCount = (observation: TraitObservation): observation is MiteCountObservation =>
  observation.kind === 'mite-count';

function logRate({ sample }: MiteCountObservation): number {
  return Math.log(
    (sample.mites + HALF_A_MITE) / (sample.method === 'natural-drop' ? sample.days : sample.bees),
  );
}

/** How fast mites grow from the first to the last count of a season, both by one method, no treatment between. */
export const miteGrowth: PairTrait = {
  id: 'mite-growth',
  shape: 'pair',
  unit: 'log growth of mites a month',
  better: 'lower',
  method:
    'Logarithm of the last over the first count of a season, a month; both by one method, four weeks to a season apart ' +
    'and without a treatment between them.',
  protocol:
    'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.4 (read): infestation growth; log form from memory',
  needsDay: true,
  alike: (observation) => (isCount(observation) ? observation.sample.method : ''),
  usable: (observation) => isCount(observation) && (spoiltByTreatment(observation) ?? true),
  daysApart: [28, 200],
  join: (earlier, later, days) => {
    if (!isCount(earlier) || !isCount(later)) return undefined;
    const { treatment } = later;
    if (treatment && !treatment.acting && treatment.daysSinceEnd < days) {
      const sentence = `Treated with ${treatment.active} between the two counts: their growth is not the bees' doing.`;
      return { setAside: 'treatment-between', sentence };
    }
    const noise = 1 / (earlier.sample.mites + HALF_A_MITE) + 1 / (later.sample.mites + HALF_A_MITE);
    const perMonth = DAYS_A_MONTH / days;
    return {
      value: (logRate(later) - logRate(earlier)) * perMonth,
      samplingVariance: noise * perMonth * perMonth,
    };
  },
  variances: {
    phenotypic: 0.16, // assumed: standard deviation of 0.4 a month inside a yard
    worker: 0.1, // assumed low: Guichard et al. 2020, Apidologie 51:876 (abstract read) found none for infestation
    queen: 0.05, // assumed
    correlation: -0.5, // assumed
    permanent: 0.05, // assumed
    status: 'assumed',
    source: 'Assumed low; Guichard et al. 2020, Apidologie 51:876 (abstract read) found none for infestation',
  },
};
