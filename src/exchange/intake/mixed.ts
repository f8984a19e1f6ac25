import { plainWords } from './plain-words.ts';
import type { InspectionField } from './row.ts';
import { readNumber } from './values/number.ts';
import { type Outcome, readOutcome } from './values/outcome.ts';

/** What a cell with several meanings says: "alive, strong; gentle 3.5". */
export interface Mixed {
  readonly outcome?: Outcome;
  readonly inspections: readonly {
    readonly field: InspectionField;
    readonly value: number;
    readonly text: string;
  }[];
  /** The words that nothing was made of, to be kept as a note. */
  readonly rest: string;
}

const NAMED: readonly (readonly [RegExp, InspectionField, 'score' | 'frames' | 'percent'])[] = [
  [/^(gentle|gentleness|temper|sanft|sanftmut|docile)$/, 'gentle', 'score'],
  [/^(calm|calmness|wabensitz)$/, 'calm', 'score'],
  [/^(swarm tendency|swarm|schwarmtrieb)$/, 'swarmTendency', 'score'],
  [/^(frames|frames of bees|fob|bees|seams|strength|waben|w)$/, 'framesOfBees', 'frames'],
  [/^(frames of brood|brood|brood frames|brut|brutwaben)$/, 'framesOfBrood', 'frames'],
  [/^(stores|frames of stores|futter|futterwaben)$/, 'framesOfStores', 'frames'],
  [/^(brood pattern|pattern|brutbild)$/, 'broodPattern', 'percent'],
];

/** Takes a cell apart at semicolons, slashes, line ends and commas that stand in no number. */
export function readMixed(text: string): Mixed {
  let outcome: Outcome | undefined;
  const inspections: { field: InspectionField; value: number; text: string }[] = [];
  const rest: string[] = [];
  for (const piece of text.split(/[;\n]|,(?!\d)|\/(?!\s*\d)|\s+-\s+/)) {
    const words = piece.trim();
    if (words === '') continue;
    const value = readNamedValue(words);
    const fate = value ? undefined : readOutcome(words);
    if (value) inspections.push({ ...value, text: words });
    else if (fate && !outcome && !/^(strong|weak|good|stark|schwach)$/i.test(words)) outcome = fate;
    else rest.push(words);
  }
  return { ...(outcome ? { outcome } : {}), inspections, rest: rest.join('; ') };
}

/** "gentle 3.5", "3,5 gentle", "8 frames of bees". */
function readNamedValue(
  words: string,
): { readonly field: InspectionField; readonly value: number } | undefined {
  const before = /^(?<name>\p{L}[\p{L} ]*?)\s*[:=]?\s*(?<number>\d[\d.,½¼¾]*\s*%?)$/u.exec(words)?.groups;
  const behind = /^(?<number>\d[\d.,½¼¾]*\s*%?)\s*(?<name>\p{L}[\p{L} ]*)$/u.exec(words)?.groups;
  const found = before ?? behind;
  const name = plainWords(found?.name ?? '');
  const kind = NAMED.find(([pattern]) => pattern.test(name));
  const value = readNumber(found?.number ?? '')?.value;
  if (!kind || value === undefined) return undefined;
  const [, field, form] = kind;
  const score = value >= 1 && value <= 4 && Number.isInteger(value * 2);
  const fits = form === 'score' ? score : value <= (form === 'frames' ? 60 : 100);
  return fits ? { field, value } : undefined;
}
