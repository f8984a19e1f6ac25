import type { LossCause } from '../../../journal/entries/colony.ts';
import type { QueenLossCause } from '../../../journal/entries/queen.ts';
import { plainWords } from '../plain-words.ts';

/** What became of a colony or a queen. */
export type Outcome =
  | { readonly is: 'alive' }
  | { readonly is: 'dead'; readonly cause?: LossCause }
  | { readonly is: 'queen-lost'; readonly cause: QueenLossCause; readonly to?: string }
  | { readonly is: 'joined' };

const ALIVE =
  /^(alive|a live|ok|okay|yes|y|1|survived|survivor|lives|living|still here|good|strong|weak|lebt|lebendig|ja|uberlebt|stark|schwach|vivant|vivante|oui|viva|vivo|si|strong cluster|made it|came through|ano|tak|zije|prezila|zyje|lever|elossa)$/;
const DEAD =
  /^(dead|died|no|n|0|lost|loss|dead out|deadout|gone|perished|did not survive|tot|nein|eingegangen|gestorben|verlust|mort|morte|non|muerta|muerto|morta|dead colony|ne|nie|nej|nei|uhynula|uhynulo|uhyn|padla|padlo|dod|doda|kuollut)$/;

const CAUSES: readonly (readonly [RegExp, LossCause])[] = [
  [/\b(starved|starvation|starve|verhungert|no food|out of food)\b/, 'starved'],
  [/\b(mites?|varroa|milben|pms)\b/, 'mites'],
  [/\b(queenless|no queen|weisellos|drone laye?r|drone laying)\b/, 'queenless'],
  [/\b(robbed|robbing|rauberei|ausgeraubt)\b/, 'robbed'],
  [/\b(foulbrood|nosema|disease|dysentery|krank|krankheit)\b/, 'disease'],
  [/\b(mice|mouse|bear|wind|storm|flood|woodpecker|maus|mause|specht|sturm)\b/, 'animal-or-weather'],
  [/\b(damp|cold|froze|frozen|wet|feucht|erfroren|kalt)\b/, 'damp-or-cold'],
  [/\b(winter|wintered out)\b/, 'winter'],
];

const QUEENS: readonly (readonly [RegExp, QueenLossCause])[] = [
  [/\b(superseded|supersedure|superceded|umgeweiselt|still umgeweiselt|requeened|replaced)\b/, 'superseded'],
  [/\b(swarmed|swarmed off|geschwarmt|abgeschwarmt)\b/, 'swarmed'],
  [/\b(failed to mate|not mated|mating failed|unmated|nicht begattet)\b/, 'failed-to-mate'],
  [/\b(never emerged|did not emerge|not hatched|nicht geschlupft)\b/, 'failed-to-emerge'],
  [/\b(drone laye?r|drone laying|drohnenbrutig)\b/, 'drone-layer'],
  [/\b(killed|culled|pinched|squashed|abgedruckt|getotet)\b/, 'killed'],
  [/\b(sold|given|gave|gifted|given away|verkauft|abgegeben|verschenkt|vendue|vendida)\b/, 'given-away'],
  [/\b(missing|not found|disappeared|vanished|verschwunden)\b/, 'not-found'],
];

const LOST_WORDS: Readonly<Record<QueenLossCause, string>> = {
  superseded: 'superseded',
  swarmed: 'left with a swarm',
  'failed-to-emerge': 'did not emerge',
  'failed-to-mate': 'did not mate',
  'drone-layer': 'laid drones only',
  killed: 'killed',
  'given-away': 'given away',
  'died-with-colony': 'died with her colony',
  'not-found': 'not found any more',
  unknown: 'lost',
};

/** What became of a queen, in words: "given away", "superseded". */
export function lostWords(cause: QueenLossCause): string {
  return LOST_WORDS[cause];
}

/** Reads words of a fate; nothing when there is none among them. */
export function readOutcome(text: string): Outcome | undefined {
  const trimmed = text.trim();
  if (/^[+✓✔☑]$/u.test(trimmed)) return { is: 'alive' };
  if (/^[-–✗✘†☠]$/u.test(trimmed)) return { is: 'dead' };
  const words = plainWords(trimmed);
  if (words === '') return undefined;
  if (ALIVE.test(words)) return { is: 'alive' };
  if (DEAD.test(words)) return { is: 'dead' };
  const dead = /\b(dead|died|lost|tot|eingegangen|mort|muerta)\b/.test(words);
  const cause = CAUSES.find(([pattern]) => pattern.test(words))?.[1];
  const lost = QUEENS.find(([pattern]) => pattern.test(words))?.[1];
  if (lost && !dead) return { is: 'queen-lost', cause: lost, ...receiver(trimmed, lost) };
  if (/\b(united|combined|joined|merged|vereinigt|reunie)\b/.test(words)) return { is: 'joined' };
  if (dead || (cause && cause !== 'winter' && words.split(' ').length <= 3))
    return { is: 'dead', ...(cause ? { cause } : {}) };
  if (/^(alive|lebt|survived|uberlebt|vivant)\b/.test(words)) return { is: 'alive' };
  return undefined;
}

function receiver(text: string, cause: QueenLossCause): { readonly to?: string } {
  const to = /\b(?:to|an|à|a)\s+(?<who>\p{L}[\p{L} .'-]*)$/iu.exec(text)?.groups?.who;
  return cause === 'given-away' && to ? { to: to.trim() } : {};
}

/** The winter that words over a column or in a cell name, by the year of its spring: "22/23" and "2023" are 2023. */
export function readWinter(text: string): number | undefined {
  const pair = /((?:19|20)?\d\d)\s*[/–-]\s*((?:19|20)?\d\d)/.exec(text);
  if (pair?.[1] && pair[2]) {
    const first = Number(pair[1].slice(-2));
    const second = Number(pair[2].slice(-2));
    if ((first + 1) % 100 === second) return pair[2].length === 4 ? Number(pair[2]) : 2000 + second;
    return undefined;
  }
  const year = /\b((?:19|20)\d\d)\b/.exec(text)?.[1] ?? /['’](\d\d)\b/.exec(text)?.[1];
  if (!year) return undefined;
  return year.length === 4 ? Number(year) : 2000 + Number(year);
}
