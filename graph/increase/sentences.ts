/**
 * The split planner in sentences: weak points, forecasts and assumptions, rounded to what is known. Cost O(length).
 */
import { ASSUMPTIONS, type AssumptionName, type Estimate } from './assumptions.ts';
import type { PartForecast } from './forecast.ts';
import type { Weakness, WeaknessCode } from './weakness.ts';

/** Rounded to two figures: these numbers are not better known. */
export function roughly(value: number): string {
  if (Math.abs(value) < 10) return String(Math.round(value * 10) / 10);
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.abs(value))) - 1);
  return (Math.round(value / step) * step).toLocaleString('en-GB');
}

/** An estimate with its range: 'about 9,300 (7,000 to 12,000)'. */
export function estimateText({ low, likely, high }: Estimate, unit: string): string {
  const middle = `about ${roughly(likely)} ${unit}`;
  return roughly(low) === roughly(high) ? middle : `${middle} (${roughly(low)} to ${roughly(high)})`;
}

const WEAK_WORDS: Readonly<Record<WeaknessCode, string>> = {
  'too-few-bees':
    'Too few bees stay here once the flying bees have gone home: shake in more, or make fewer parts',
  'too-few-bees-for-brood':
    'Too few bees to cover this brood: it would chill. Give brood to a stronger part or shake in bees',
  'falls-too-low': 'Its bees run low before a new queen makes up for them: give capped brood',
  'too-little-stores': 'Too little to eat: give a frame of stores, or feed',
  'nothing-to-raise-from':
    'No eggs, just hatched larvae or cells to raise a queen from: give a frame with eggs',
  'no-queen-found':
    'The frame that the old queen was found on is not in this part: find her before you close the hives',
};

/** What is weak in a part, with the figure and what is asked. */
export function weaknessText({ code, found, asked }: Weakness): string {
  if (!found || asked === undefined) return `${WEAK_WORDS[code]}.`;
  const unit = code === 'too-little-stores' ? 'days' : 'bees';
  return `${WEAK_WORDS[code]} (${estimateText(found, unit)}; at least ${roughly(asked)} are asked).`;
}

/** A part in its weeks: bees and brood, and how long the stores last. */
export function forecastText({ weeks, storesLast }: PartForecast): string {
  const lines = weeks.map(({ week, bees }) => {
    const when = week === 0 ? 'Now' : `In ${week} weeks`;
    return `${when} ${estimateText(bees, 'bees')}.`;
  });
  const food = storesLast === undefined ? '' : ` Stores last about ${storesLast} days if nothing comes in.`;
  return lines.join(' ') + food;
}

/** One assumption as it stands beside an estimate. */
export function assumptionText(name: AssumptionName): string {
  const { about, low, likely, high, unit, source, basis } = ASSUMPTIONS[name];
  const range = low === high ? String(likely) : `${likely} (${low} to ${high})`;
  return `${about}: ${range} ${unit}. ${source} [${basis}].`;
}
