import type { EachTrait } from './trait.ts';

/** Added to both counts so that none and all have a logit: Haldane 1956, Ann. Hum. Genet. 20:309 (from memory). */
const HALF_A_CELL = 0.5;

/** Killed brood cleared out in a set time, by piercing or freezing. */
export const hygienic: EachTrait = {
  id: 'hygienic',
  shape: 'each',
  unit: 'logit of the share of cells cleared',
  better: 'higher',
  method:
    'Log of cells cleared over cells not cleared, half a cell added to each; compared inside one yard and season, one ' +
    'method and equal hours.',
  protocol:
    'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.4.3 (read): compare only within equal hours',
  needsDay: false,
  alike: (observation) =>
    observation.kind === 'hygienic-test' ? `${observation.method} ${observation.hours} h` : '',
  figure: (observation) => {
    if (observation.kind !== 'hygienic-test') return undefined;
    const left = observation.notCleared + HALF_A_CELL;
    const cleared = observation.cells - observation.notCleared + HALF_A_CELL;
    return { value: Math.log(cleared / left), samplingVariance: 1 / cleared + 1 / left };
  },
  variances: {
    phenotypic: 1.2, // assumed: shares between about a half and nine tenths inside a yard
    worker: 0.3, // between 0.18 +- 0.13, Maucourt et al. 2020, and 0.52, Padilha et al. 2013 (abstracts read)
    queen: 0.1, // assumed
    correlation: -0.3, // assumed
    permanent: 0.1, // assumed
    status: 'published',
    source:
      'Between 0.18 +- 0.13 (Maucourt et al. 2020, Insects 11:587) and 0.52 (Padilha et al. 2013, Genet. Mol. Biol. ' +
      '36:207; abstracts read); the queen part is assumed',
  },
};
