import type { SeasonOutlook } from '../../graph/choice/look-ahead/look-ahead.ts';
import type { Bands } from '../../graph/numerics/bands.ts';
import { percents } from '../parts/percents.ts';
import type { Figure } from './outlook-scale.ts';
import { spreads } from './words.ts';

/** What a look-ahead shows, and how its figures are said. */

export const FIGURES: readonly {
  readonly figure: Figure;
  readonly title: string;
  readonly say: (value: number) => string;
}[] = [
  { figure: 'gain', title: 'Gain in merit, spreads', say: (value) => spreads(value) },
  { figure: 'inbreeding', title: 'Inbreeding of the queens', say: percents },
  { figure: 'alleles', title: 'Sex alleles among them', say: (value) => String(Math.round(value)) },
  { figure: 'lines', title: 'Lines left', say: (value) => String(Math.round(value)) },
];

/** What the last season comes to, each figure with its band. */
export function endWords({ season, gain, inbreeding, alleles, lines, lost }: SeasonOutlook): string {
  const gone =
    lost > 0.005 ? ` In one history of ${Math.round(1 / lost)} every colony was lost on the way.` : '';
  if (!gain || !inbreeding) return `After ${season} seasons no history has a colony left.`;
  return (
    `After ${season} seasons: gain ${bandWords(gain, (value) => spreads(value))}, inbreeding ${bandWords(inbreeding, percents)}, ` +
    `sex alleles ${bandWords(alleles, whole)}, lines ${bandWords(lines, whole)}.${gone}`
  );
}

const whole = (value: number) => String(Math.round(value));

function bandWords(bands: Bands, say: (value: number) => string): string {
  return `${say(bands.median)} (${rangeWords(bands, say)})`;
}

/** "2 to 15 %": nine histories in ten. */
export function rangeWords(
  { low, high }: Pick<Bands, 'low' | 'high'>,
  say: (value: number) => string,
): string {
  return `${say(low).replace('\u00a0%', '')} to ${say(high)}`;
}
