import { winterYears } from '../../src/journal/day-words.ts';
import { LossCause } from '../../src/journal/entries/colony.ts';
import type { Compass, Evidence, FrameCounts } from '../../src/journal/entry-parts.ts';

/** Words for the values that entries hold. */

export const LOSS_CAUSES = {
  winter: 'winter',
  starved: 'starved',
  mites: 'mites',
  queenless: 'queenless',
  robbed: 'robbed out',
  disease: 'disease',
  'swarmed-out': 'swarmed out',
  'damp-or-cold': 'damp or cold',
  'animal-or-weather': 'animal or weather',
  sold: 'sold',
  given: 'given away',
  other: 'another cause',
  unknown: 'cause unknown',
  joined: 'joined with another',
} as const satisfies Readonly<Record<LossCause | 'joined', string>>;

export const QUEEN_LOSSES = {
  superseded: 'superseded',
  swarmed: 'left with a swarm',
  'failed-to-emerge': 'did not emerge',
  'failed-to-mate': 'did not mate',
  'drone-layer': 'lays drones only',
  killed: 'killed',
  'given-away': 'given away',
  'died-with-colony': 'died with her colony',
  'not-found': 'not found any more',
  unknown: 'not known',
  moved: 'moved on',
  split: 'went with a split',
  'another-came-first': 'another came first',
} as const;

export const BEGINNINGS = {
  'already-here': 'here when records begin',
  split: 'from a split',
  'swarm-taken': 'a swarm taken',
  package: 'package bees',
  nucleus: 'a nucleus got',
  bought: 'bought',
} as const;

export const EVIDENCE: Readonly<Record<Evidence, string>> = {
  'eggs-named': 'her eggs were named',
  'dam-in-colony': 'she headed the colony when the eggs were laid',
  'unmarked-queen-found': 'an unmarked queen stood in her place',
  'old-record': 'taken over from an older record',
  told: 'told by another keeper',
  'marker-test': 'a laboratory test',
};

export const QUEEN_SEEN = {
  'seen-marked': 'Marked queen seen',
  'seen-unmarked': 'Unmarked queen seen',
  virgin: 'Virgin seen',
  'not-seen': 'Queen not seen',
} as const;

export const MITE_METHODS = {
  wash: 'Wash',
  'sugar-shake': 'Sugar shake',
  'natural-drop': 'Natural drop',
} as const;

export const CELL_REASONS = {
  swarm: 'swarm cells',
  supersedure: 'supersedure cells',
  emergency: 'emergency cells',
} as const;

export const FEEDS = {
  syrup: 'syrup',
  fondant: 'fondant',
  sugar: 'sugar',
  'honey-frames': 'frames of honey',
  pollen: 'pollen',
} as const;

export const COMPASS: Readonly<Record<Compass, string>> = {
  N: 'north',
  NE: 'north-east',
  E: 'east',
  SE: 'south-east',
  S: 'south',
  SW: 'south-west',
  W: 'west',
  NW: 'north-west',
};

const FRAME_WORDS: Readonly<Record<keyof FrameCounts, string>> = {
  eggs: 'with eggs',
  openBrood: 'of open brood',
  emergingBrood: 'of capped brood',
  cells: 'with queen cells',
  stores: 'of stores',
  drawnComb: 'of drawn comb',
  foundation: 'of foundation',
  shakenBees: 'of shaken bees',
};

/** "1 frame of open brood, 2 of stores". */
export function frameText(frames: FrameCounts): string {
  const parts = Object.entries(frames).filter((part): part is [keyof FrameCounts, number] =>
    Boolean(part[1]),
  );
  return parts
    .map(
      ([kind, count], at) =>
        `${number(count)}${at === 0 ? ` ${count === 1 ? 'frame' : 'frames'}` : ''} ${FRAME_WORDS[kind]}`,
    )
    .join(', ');
}

/** A number as a keeper writes it: no trailing noughts, halves and quarters as fractions. */
export function number(value: number): string {
  const whole = Math.floor(value);
  const rest = value - whole;
  const fraction = rest === 0.5 ? '½' : rest === 0.25 ? '¼' : rest === 0.75 ? '¾' : undefined;
  if (fraction) return `${whole === 0 ? '' : whole}${fraction}`;
  return String(Math.round(value * 100) / 100);
}

/** "1 frame", "3 frames". */
export function count(value: number, one: string, many = `${one}s`): string {
  return `${number(value)} ${value === 1 ? one : many}`;
}

/** "a, b and c". */
export function list(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** First letter large. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** First letter small, to go on within a sentence. */
export function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** "winter 2025/26" for 2026. */
export function winterText(winter: number): string {
  return `winter ${winterYears(winter)}`;
}

/** Causes of a loss to choose from, in the order in which they are asked. */
export const LOSS_CHOICES = LossCause.options.map((value) => ({
  value,
  label: sentence(LOSS_CAUSES[value]),
}));
