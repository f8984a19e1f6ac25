import { COMPARISON_LIMITS } from '../../graph/merit/counts/comparison.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import { shortDay } from '../parts/days.ts';
import { count, MITE_METHODS, number, sentence } from '../parts/words.ts';
import type { LineMites, RoundByLine } from './by-line.ts';

/** A line beside the other colonies of a round, in sentences: how many times their mites, and whether luck may do it. */

const percent = (rate: number) => `${(100 * rate).toFixed(1)}\u00a0%`;
const times = (ratio: number) => (ratio >= 10 ? number(Math.round(ratio)) : ratio.toFixed(ratio < 1 ? 2 : 1));

/** "1.2 % on 5 colonies; the others 2.4 % on 9." */
export function ratesWords({ colonies: [own, others], comparison: { rates } }: LineMites): string {
  return `${percent(rates[1])} of bees in ${count(own, 'colony', 'colonies')}; in the ${others === 1 ? 'other' : `${others} others`} ${percent(rates[0])}.`;
}

/** "0.5 times the mites of the others (0.2 to 1.1): not told from luck." */
export function ratioWords({ comparison: { ratio, ratioInterval, warnings } }: LineMites): string {
  const { low, high } = ratioInterval;
  const said = `${times(ratio)} times the mites of the others (${times(low)} to ${times(high)})`;
  const hint = warnings.length > 0 ? ', a hint and no more' : '';
  if (high < 1) return `${said}: fewer than luck alone would bring${hint}.`;
  if (low > 1) return `${said}: more than luck alone would bring${hint}.`;
  return `${said}: not told from luck.`;
}

/** "Washes of 3 to 10 June that no treatment spoilt." */
export function roundWords({ method, from, to }: RoundByLine, on: PlainDay): string {
  const days = from === to ? shortDay(from, on) : `${shortDay(from, on)} to ${shortDay(to, on)}`;
  return sentence(`${MITE_METHODS[method]}, ${days}; colonies under or soon after a treatment left out.`);
}

/** What to make of the figures: how clumped the mites are, and where numbers are small. */
export function cautionWords({ lines }: RoundByLine): string {
  const spread = Math.max(...lines.map(({ comparison }) => comparison.dispersion));
  const clumped =
    spread > 1
      ? `Mites sit in clumps: colonies vary up to ${times(spread)} times as much as counting alone would bring (in variance), and the limits, right 95 times of 100, allow for it.`
      : 'Mites sit in clumps; here colonies vary no more than counting alone would bring, and the limits are right 95 times of 100.';
  const warned = new Set(lines.flatMap(({ comparison }) => comparison.warnings));
  const { coloniesInGroup, mitesInGroup } = COMPARISON_LIMITS;
  const small = [
    warned.has('few-colonies') ? `fewer than ${coloniesInGroup} colonies` : '',
    warned.has('few-mites') ? `fewer than ${mitesInGroup} mites` : '',
  ].filter(Boolean);
  const few =
    small.length > 0
      ? ` Where a line or the rest has ${small.join(' or ')}, the limits themselves are rough.`
      : '';
  const many = warned.has('mites-exceed-bees')
    ? ' One wash has more mites than bees, which stretches all of it.'
    : '';
  return `${clumped}${few}${many} Yard and day are not taken out here; in the ranking they are.`;
}
