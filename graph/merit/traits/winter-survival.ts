import type { WinterObservation } from '../observations.ts';
import type { EachTrait, Reason } from './trait.ts';

/** Losses that say nothing of the bees; `Reason` names the cause. */
const FROM_OUTSIDE: ReadonlySet<string> = new Set(['animal-or-weather', 'sold', 'given']);

/** True of a loss that came from outside: an animal, the weather, a sale or a gift. */
export function saysNothingOfBees({ alive, cause }: WinterObservation): boolean {
  return !alive && cause !== undefined && FROM_OUTSIDE.has(cause);
}

/** Came through winter: 1 alive in spring, 0 dead. */
export const winterSurvival: EachTrait = {
  id: 'winter-survival',
  shape: 'each',
  unit: 'share of winters survived',
  better: 'higher',
  method:
    'Alive in spring 1, dead 0, for the queen whose bees went into the winter; compared inside one yard and winter. ' +
    'Losses to animals, weather, sale or gift are set aside.',
  protocol: 'Büchler et al. 2013, J. Apic. Res. 52(1), section 3.3.7 (read)',
  needsDay: false,
  figure: (observation) => {
    if (observation.kind !== 'winter') return undefined;
    if (!observation.alive && FROM_OUTSIDE.has(observation.cause ?? ''))
      return lostFromOutside(observation.cause!);
    return { value: observation.alive ? 1 : 0, samplingVariance: 0 };
  },
  variances: {
    phenotypic: 0.16, // derived: p (1 - p) at four of five colonies alive
    worker: 0.1, // assumed: no published estimate for survival found
    queen: 0.05, // assumed
    correlation: -0.3, // assumed
    permanent: 0.05, // assumed
    status: 'assumed',
    source:
      'Assumed low; for winter food use Maucourt et al. 2020, Insects 11:587 (abstract read) give 0.11 +- 0.09',
  },
};

function lostFromOutside(cause: string): Reason {
  const words = cause === 'animal-or-weather' ? 'an animal or the weather' : 'parting with it';
  return { setAside: 'loss-from-outside', sentence: `Lost through ${words}: that says nothing of its bees.` };
}
