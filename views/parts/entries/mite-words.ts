import { infestation, type MiteCount } from '../../../graph/merit/counts/infestation.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { count, MITE_METHODS, number } from '../words.ts';

type Sample = EntryOf<'mite-count'>['sample'];

/** A count in percent of bees, or in mites a day for the drop, with its 95 % limits. */
export interface MiteFigure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: '%' | 'a day';
}

export function miteFigure(sample: Sample): MiteFigure {
  const drop = sample.method === 'natural-drop';
  const asCount: MiteCount = sample;
  const { rate, low, high } = infestation(asCount);
  const scale = drop ? 1 : 100;
  return { value: rate * scale, low: low * scale, high: high * scale, unit: drop ? 'a day' : '%' };
}

/** "Wash: 4 mites on 300 bees, 1.3 % (0.4 to 3.4 %)." No mites found is said as a bound, never as none. */
export function miteWords(sample: Sample): string {
  const figure = miteFigure(sample);
  const found =
    sample.method === 'natural-drop'
      ? `${count(sample.mites, 'mite')} in ${count(sample.days, 'day')}`
      : `${count(sample.mites, 'mite')} on ${number(sample.bees)} bees`;
  return `${MITE_METHODS[sample.method]}: ${found}, ${figureWords(figure)}.`;
}

/** "1.3 % (0.4 to 3.4 %)", or "below 1.2 %" where no mite was found. */
export function figureWords({ value, low, high, unit }: MiteFigure): string {
  if (value === 0) return `below ${high.toFixed(1)} ${unit}`;
  return `${value.toFixed(1)} ${unit} (${low.toFixed(1)} to ${high.toFixed(1)} ${unit})`;
}
