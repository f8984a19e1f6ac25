/** Splits planned before they are made: from frames to parts, and what each part will have in weeks. */
export {
  ASSUMPTIONS,
  type Assumption,
  type AssumptionName,
  type Case,
  type Estimate,
  type OwnAssumptions,
} from './assumptions.ts';
export {
  type CombContent,
  type CombFrame,
  contentOf,
  FRAME_SIZES,
  type FrameSize,
  sideDm2,
  sumContent,
} from './comb.ts';
export {
  FORECAST_DEFAULTS,
  type ForecastOptions,
  forecastPart,
  type PartForecast,
  type PartOnDay,
} from './forecast.ts';
export { contentOfPart, type PartQueen, type SplitPart, type Stand, settledBees } from './parts.ts';
export { DAYS_TO_RAISED_EGGS, PLAN_DEFAULTS, planSplit, type SplitPlan, type SplitWish } from './plan.ts';
export { assumptionText, estimateText, forecastText, roughly, weaknessText } from './sentences.ts';
export {
  WEAKNESS_DEFAULTS,
  type Weakness,
  type WeaknessCode,
  type WeaknessLimits,
  type WeaknessOptions,
  weakParts,
} from './weakness.ts';
