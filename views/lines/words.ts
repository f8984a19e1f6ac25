import { dayOfNumber } from '../../src/journal/day.ts';
import { dayText, winterYears } from '../../src/journal/day-words.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { MakingHow } from '../../src/registry/state.ts';
import { sentence } from '../parts/words.ts';
import type { Joint } from './geometry.ts';
import type { Fate, Life } from './lives.ts';

/** The drawing in words: for tooltips, screen readers, the outline and the panel of the chosen queen. */

type NameOf = (id: QueenId) => string;

/** "winter 2023/24", "winters 2022/23, 2023/24", "winters 2020/21 to 2023/24". */
export function wintersText(springs: readonly number[]): string {
  const first = springs[0];
  const last = springs.at(-1);
  if (first === undefined || last === undefined) return 'no winter yet';
  if (springs.length === 1) return `winter ${winterYears(first)}`;
  if (springs.length > 2 && last - first === springs.length - 1) {
    return `winters ${winterYears(first)} to ${winterYears(last)}`;
  }
  return `winters ${springs.map(winterYears).join(', ')}`;
}

const MADE: Readonly<Record<MakingHow, string>> = {
  split: 'in a split',
  cells: 'from cells carried over',
  eggs: 'from a frame of eggs given',
  graft: 'in a graft',
  swarm: 'from swarm cells',
  supersedure: 'by supersedure',
  emergency: 'from emergency cells',
  'brought-in': 'brought in',
};

export function makingText(how: MakingHow | 'unknown'): string {
  return how === 'unknown' ? 'in a way nobody wrote down' : MADE[how];
}

const FATES: Readonly<Record<Fate, string>> = {
  living: 'lays',
  expected: 'is awaited',
  failed: 'came to nothing',
  died: 'is gone',
  left: 'left alive',
  unknown: 'went no one knows where',
};

/** What she is now, or what became of her and when: "lays in Hive 3", "came to nothing in June 2024". */
export function fateText({ fate, colony, end }: Life): string {
  const where = colony ? ` in ${colony.label}` : '';
  if (fate === 'living' || fate === 'expected') return FATES[fate] + where;
  return end === undefined ? FATES[fate] : `${FATES[fate]}, ${monthText(end)}`;
}

/** "May 2024". */
export function monthText(day: number): string {
  return dayText(dayOfNumber(day).slice(0, 7) as ReturnType<typeof dayOfNumber>);
}

/** Her dam as far as she is known: "daughter of Alder", "probably daughter of Alder", "dam unknown". */
export function damText(life: Life, nameOf: NameOf): string {
  if (!life.dam) return 'dam unknown';
  return `${life.certainty === 'probable' ? 'probably ' : ''}daughter of ${nameOf(life.dam)}`;
}

/** One queen in a sentence. */
export function lifeSentence(life: Life, nameOf: NameOf): string {
  const made = life.how && life.how !== 'brought-in' ? ` ${makingText(life.how)}` : '';
  const winters = life.winters.length > 0 ? `; crossed ${wintersText(life.winters)}` : '';
  return `${sentence(life.title)}: ${damText(life, nameOf)}, ${sinceText(life)}${made}; ${fateText(life)}${winters}.`;
}

/** The month from which she is drawn; where it is not known, about which year. */
export function sinceText({ start, startSure }: Life): string {
  const month = monthText(start);
  return startSure ? month : `about ${month.slice(-4)}`;
}

/** The event that made sisters, in a sentence. */
export function jointSentence(joint: Joint, nameOf: NameOf): string {
  const daughters = joint.daughters.map(({ id }) => nameOf(id)).join(', ');
  return `Out of ${nameOf(joint.dam)}, ${makingText(joint.how)}: ${daughters}.`;
}
