import { ASSUMPTIONS } from '../../../graph/increase/assumptions.ts';
import { type CombFrame, roughly, sideDm2 } from '../../../graph/increase/index.ts';
import type { PlainDay } from '../../../src/journal/day.ts';
import { dayInYear } from '../../parts/days.ts';
import { count, list, number } from '../../parts/words.ts';
import type { SketchBasis, SketchFrame } from './sketch.ts';

/** The planner in words. */

const SHARES: Readonly<Record<string, string>> = {
  '0.25': 'a quarter',
  '0.5': 'half',
  '0.75': 'three quarters',
  '1': 'full',
};

const AGES = { open: 'mostly open', both: 'open and capped', capped: 'mostly capped' } as const;

/** A frame as a screen reader says it: "Frame 4: bees full, brood three quarters, open and capped; eggs". */
export function frameWords(
  { bees, brood, age, stores, eggs, cells, queen }: SketchFrame,
  place: number,
): string {
  const parts = [
    bees > 0 && `bees ${SHARES[bees]}`,
    brood > 0 && `brood ${SHARES[brood]}, ${AGES[age]}`,
    stores > 0 && `stores ${SHARES[stores]}`,
    eggs && 'eggs',
    cells && 'queen cells',
    queen && 'the queen',
  ].filter(Boolean);
  return `Frame ${place}: ${parts.length > 0 ? parts.join('; ') : 'empty'}`;
}

/** Where the sketch comes from, said as such: "Sketched from what was last seen: 10½ frames of bees (7 June) ...". */
export function basisWords({ bees, brood, stores, eggs }: SketchBasis, on: PlainDay): string {
  if (!bees && !brood) return 'Nothing is known of its strength yet. Tap the frames and say what is on them.';
  const seen = [
    bees && `${count(bees.value, 'frame')} of bees (${dayInYear(bees.day, on)})`,
    brood && `${number(brood.value)} of brood (${dayInYear(brood.day, on)})`,
    stores && `${number(stores.value)} of stores (${dayInYear(stores.day, on)})`,
  ].filter((part): part is string => part !== undefined);
  const unseen = [stores ? '' : 'stores', eggs?.value ? '' : 'eggs', 'where the queen is'].filter(Boolean);
  return `A sketch from what was last seen: ${list(seen)}. Not known: ${list(unseen)}. Tap a frame to correct it.`;
}

/** Bees as frames of this hive: "about 9,300 bees, 4 frames". */
export function framesOfBees(bees: number, frames: readonly CombFrame[]): string {
  const full = fullFrame(frames);
  return count(Math.round((2 * bees) / full) / 2, 'frame');
}

function fullFrame(frames: readonly CombFrame[]): number {
  const [first] = frames;
  if (!first) return 1;
  return first.size.fullBees ?? 2 * sideDm2(first.size) * ASSUMPTIONS.beesPerDm2.likely;
}

/** "about 9,300 (7,000 to 12,000)". */
export function rangeWords({ low, likely, high }: { low: number; likely: number; high: number }): string {
  return `about ${roughly(likely)} (${roughly(low)} to ${roughly(high)})`;
}
