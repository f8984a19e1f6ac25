import type { TraitEvaluation } from '../../graph/merit/evaluate.ts';
import type { SetAside } from '../../graph/merit/trait-record.ts';
import type { YardId } from '../../src/journal/ids.ts';
import { count } from '../parts/words.ts';

/** What the evaluation of a trait rests on, in words. */

/** "139 records in 18 comparison groups, 9 of them small; 51 set aside". */
export function groundWords({ records, groups, setAside }: TraitEvaluation): string {
  const small = groups.filter((group) => group.small).length;
  const aside = setAside.length > 0 ? `; ${setAside.length} set aside` : '';
  if (records.length === 0) return `Nothing to compare${aside}`;
  const few = small === 0 ? '' : small === groups.length ? ', all small' : `, ${small} of them small`;
  return `${count(records.length, 'record')} in ${count(groups.length, 'comparison group')}${few}${aside}`;
}

/** Where its variances come from, in a word. */
export function sourceWord({ variancesFrom, warnings }: TraitEvaluation): string {
  if (variancesFrom === 'own') return 'own variances';
  return warnings.includes('assumed-variances') ? 'assumed variances' : 'published variances';
}

/** What was set aside, most frequent reason first: counts by the reason's code. */
export function asideByReason(
  setAside: readonly SetAside[],
): readonly { readonly code: SetAside['code']; readonly records: readonly SetAside[] }[] {
  const codes = new Map<SetAside['code'], SetAside[]>();
  for (const each of setAside) codes.set(each.code, [...(codes.get(each.code) ?? []), each]);
  return [...codes]
    .map(([code, records]) => ({ code, records: records.sort((a, b) => b.day - a.day) }))
    .sort((a, b) => b.records.length - a.records.length || (a.code < b.code ? -1 : 1));
}

/** Records set aside for one and the same reason, so that it is said once. */
export function bySentence(
  records: readonly SetAside[],
): readonly { readonly sentence: string; readonly records: readonly SetAside[] }[] {
  const sentences = new Map<string, SetAside[]>();
  for (const each of records) sentences.set(each.sentence, [...(sentences.get(each.sentence) ?? []), each]);
  return [...sentences].map(([sentence, alike]) => ({ sentence, records: alike }));
}

export const ASIDE_WORDS: Readonly<Record<SetAside['code'], string>> = {
  'changing-over': 'workers still partly the previous queen’s',
  'nobody-known': 'nobody knows whose workers',
  'day-not-exact': 'the day is not known',
  'yard-unknown': 'the yard is not known',
  'treatment-acting': 'counted while a treatment acted',
  'after-treatment': 'counted too soon after a treatment',
  'treatment-between': 'treated between two counts',
  'loss-from-outside': 'lost through nothing the bees did',
  'too-weak-to-tell': 'too few frames to tell',
  'group-of-one': 'nobody to compare with',
  'not-in-pedigree': 'no place in the pedigree yet',
  'mating-unknown': 'her mating is not known',
};

/** "High Fallow by wash, 10 queens": the groups season by season, latest first. */
export function groupsWords(
  { groups }: TraitEvaluation,
  yardName: (yard: YardId) => string,
): readonly { readonly season: number; readonly words: string }[] {
  const seasons = new Map<number, string[]>();
  for (const { group, season, yard, queens, small } of groups) {
    const [, , alike] = group.split(' / ');
    const by = alike ? ` by ${ALIKE_WORDS[alike] ?? alike}` : '';
    const words = `${yardName(yard as YardId)}${by}, ${count(queens, 'queen')}${small ? ' (small)' : ''}`;
    seasons.set(season, [...(seasons.get(season) ?? []), words]);
  }
  return [...seasons]
    .sort((a, b) => b[0] - a[0])
    .map(([season, words]) => ({ season, words: words.join('; ') }));
}

/** What a group has in common besides its place, where it is a method of counting. */
const ALIKE_WORDS: Readonly<Record<string, string>> = {
  wash: 'wash',
  'sugar-shake': 'sugar shake',
  'natural-drop': 'natural drop',
};
