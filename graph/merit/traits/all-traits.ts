import { broodPattern } from './brood-pattern.ts';
import { calm } from './calm.ts';
import { gentle } from './gentle.ts';
import { honey } from './honey.ts';
import { hygienic } from './hygienic.ts';
import { miteGrowth } from './mite-growth.ts';
import { miteLevel } from './mite-level.ts';
import { springBuildUp } from './spring-build-up.ts';
import { swarmTendency } from './swarm-tendency.ts';
import type { Trait } from './trait.ts';
import { winterStrength } from './winter-strength.ts';
import { winterSurvival } from './winter-survival.ts';

/** Every trait, in the order in which they are shown. To add one: write its module, name it here and in `TraitId`. */
export const TRAITS: readonly Trait[] = [
  winterSurvival,
  winterStrength,
  springBuildUp,
  gentle,
  calm,
  swarmTendency,
  miteLevel,
  miteGrowth,
  hygienic,
  broodPattern,
  honey,
];
