import type { Contribution } from '../../graph/merit/index-of-traits.ts';
import type { TraitId } from '../../graph/merit/traits/trait.ts';
import { count, list } from '../parts/words.ts';
import type { Candidate, Ranking, Standing } from './ranking.ts';

/** What the numbers of the choice mean, in the words of the yard. */

const SPEAKS_FOR: Readonly<Record<TraitId, string>> = {
  'winter-survival': 'winters survived',
  'winter-strength': 'strength kept over winter',
  'spring-build-up': 'spring build-up',
  gentle: 'gentleness',
  calm: 'calm on the comb',
  'swarm-tendency': 'no urge to swarm',
  'mite-level': 'few mites',
  'mite-growth': 'slow growth of mites',
  hygienic: 'hygiene',
  'brood-pattern': 'full brood',
  honey: 'honey',
};

const SPEAKS_AGAINST: Readonly<Record<TraitId, string>> = {
  'winter-survival': 'winter losses',
  'winter-strength': 'strength lost over winter',
  'spring-build-up': 'a slow spring',
  gentle: 'temper',
  calm: 'running on the comb',
  'swarm-tendency': 'swarming',
  'mite-level': 'many mites',
  'mite-growth': 'fast growth of mites',
  hygienic: 'little hygiene',
  'brood-pattern': 'gaps in the brood',
  honey: 'little honey',
};

/** Part of a spread of merit below which a trait is not worth naming. */
const WORTH_NAMING = 0.1;
const MOST_NAMED = 2;

/** One short sentence why she stands where she stands, from the traits that move her most. */
export function whyWords(contributions: readonly Contribution[]): string {
  const named = contributions.filter(({ points }) => Math.abs(points) >= WORTH_NAMING);
  const words = (parts: readonly Contribution[], by: typeof SPEAKS_FOR) =>
    list(parts.slice(0, MOST_NAMED).map(({ trait }) => by[trait]));
  const good = words(
    named.filter(({ points }) => points > 0),
    SPEAKS_FOR,
  );
  const bad = words(
    named.filter(({ points }) => points < 0),
    SPEAKS_AGAINST,
  );
  if (!good && !bad) return 'Nothing on record speaks much for or against her.';
  if (!bad) return `For her: ${good}.`;
  return good ? `For her: ${good}. Against: ${bad}.` : `Against her: ${bad}.`;
}

/** A reliability below which the list says that hardly anything is known, the first of it included (assumed). */
const HARDLY_KNOWN = 0.1;

/** How much of her merit is known, 0 to 1, in words. */
export function reliabilityWords(reliability: number): string {
  if (reliability < 0.02) return 'next to nothing known';
  if (reliability < HARDLY_KNOWN) return 'hardly known';
  if (reliability < 0.25) return 'little known';
  if (reliability < 0.5) return 'partly known';
  return reliability < 0.75 ? 'well known' : 'very well known';
}

/** "6 in 10", "more than 19 in 20": chances as a keeper says them. */
export function chanceWords(chance: number): string {
  if (chance < 0.05) return 'less than 1 in 20';
  if (chance > 0.95) return 'more than 19 in 20';
  const tenths = Math.min(9, Math.max(1, Math.round(10 * chance)));
  return `${tenths}\u00a0in\u00a010`;
}

/** Heading of each group of the list. */
export const STANDING_WORDS: Readonly<Record<Exclude<Standing, 'first'>, string>> = {
  unranked: 'Not ranked: no record of theirs stands in a comparison group of five queens or more',
  close: 'Too close to tell apart on these records',
  'probably-behind': 'Probably behind the first, not surely',
  behind: 'Behind the first',
};

/** The answer in a sentence: who stands first, and who cannot be told apart from her. */
export function rankingLead({ rows, weighed }: Ranking, nameOf: (row: Candidate) => string): string {
  const [first, ...others] = rows;
  if (!first) return 'No laying queen is alive today.';
  if (!weighed) return 'Every trait is left out, so nothing ranks the queens. Give at least one a weight.';
  const close = others.filter(({ standing }) => standing === 'close');
  if (others.length === 0) return `${nameOf(first)} is the only laying queen alive.`;
  if (first.standing === 'unranked')
    return 'Every comparison group has fewer than five queens: what sets them apart is mostly luck, so nobody is ranked.';
  const doubt = first.reliability < HARDLY_KNOWN ? ' Even her own merit is hardly known.' : '';
  if (close.length === 0) {
    const ranked = others.some(({ standing }) => standing !== 'unranked');
    return `${nameOf(first)} stands first, ${ranked ? 'and the records set her apart from all others ranked.' : 'the only one who can be ranked.'}${doubt}`;
  }
  const who = someOf(close.map(nameOf), MOST_NAMED);
  return `${nameOf(first)} stands first. ${who} cannot be told apart from her on these records.${doubt}`;
}

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "Brook, Gale and seven more": the first of many. */
export function someOf(names: readonly string[], most: number): string {
  const rest = names.length - most;
  // One more takes no more room than saying so.
  if (rest <= 1) return list(names);
  return list([...names.slice(0, most), `${smallNumber(rest)} more`]);
}

/** Whole numbers up to ten in letters. */
export function smallNumber(value: number): string {
  return SMALL[value] ?? String(value);
}

/** "+0.6", "−1.0", "0": spreads of merit, to one decimal where no more are asked for. */
export function spreads(value: number, digits = 1): string {
  const size = Math.abs(value).toFixed(digits);
  if (Number(size) === 0) return '0';
  return `${value > 0 ? '+' : '−'}${size}`;
}

/** Decimals that tell the marks of an axis apart. */
export function markDigits(marks: readonly number[], least: number): number {
  const [first = 0, second = first] = marks;
  const step = Math.abs(second - first);
  return step === 0 ? least : Math.max(least, Math.ceil(-Math.log10(step) - 1e-9));
}

/** "1 in 9": a share as one of so many. */
export function oneIn(share: number): string {
  return `1 in ${Math.max(1, Math.round(1 / share))}`;
}

/** The plan in a sentence: "3 daughters each from Brook, Gale and Norther, 2 from Ford and 1 from Tansy." */
export function planLead(parts: readonly { readonly name: string; readonly daughters: number }[]): string {
  const alike = new Map<number, string[]>();
  for (const { name, daughters } of parts) alike.set(daughters, [...(alike.get(daughters) ?? []), name]);
  const groups = [...alike]
    .sort((a, b) => b[0] - a[0])
    .map(([daughters, names], at) => {
      const what = at === 0 ? ` ${daughters === 1 ? 'daughter' : 'daughters'}` : '';
      return `${daughters}${what}${names.length > 1 ? ' each' : ''} from ${list(names)}`;
    });
  return `${groups.join('; ')}.`;
}

/** "4 from Brook, 3 from Gale and 1 from Tansy". */
export function planWords(parts: readonly { readonly name: string; readonly daughters: number }[]): string {
  return list(parts.map(({ name, daughters }) => `${daughters} from ${name}`));
}

export function daughtersWords(daughters: number): string {
  return daughters === 0 ? 'no daughter' : count(daughters, 'daughter');
}
