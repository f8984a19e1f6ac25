import type { TraitId, TraitWeights } from '../../graph/merit/index.ts';
import type { Settings } from './settings.ts';

/**
 * The weight that each trait starts with in the index, 0 (left out) to 5, for one who breeds survivors: coming through
 * winter first, then mites, temper and swarming. A suggestion of this project; the keeper moves them.
 */
export const SUGGESTED_WEIGHTS: Readonly<Record<TraitId, number>> = {
  'winter-survival': 4,
  'winter-strength': 2,
  'spring-build-up': 1,
  gentle: 2,
  calm: 1,
  'swarm-tendency': 2,
  'mite-level': 2,
  'mite-growth': 2,
  hygienic: 1,
  'brood-pattern': 1,
  honey: 1,
};

/** The keeper's weights, the suggestion where they have set none. */
export function traitWeights({ traitWeights: own }: Pick<Settings, 'traitWeights'>): TraitWeights {
  const known = Object.entries(own).filter(([trait]) => trait in SUGGESTED_WEIGHTS);
  return { ...SUGGESTED_WEIGHTS, ...Object.fromEntries(known) };
}
