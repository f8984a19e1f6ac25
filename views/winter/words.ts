import { clopperPearson } from '../../graph/merit/counts/intervals.ts';
import type { LineScore } from '../../graph/merit/survival/line-scores.ts';
import { FEWEST_EXPECTED_DEATHS, type LogRank } from '../../graph/merit/survival/log-rank.ts';
import { count, sentence } from '../parts/words.ts';
import type { Share } from './outcomes.ts';

/** Winters in sentences: shares with their limits, and how far a line can be told from luck. */

const percent = (share: number) => `${Math.round(100 * share)}\u00a0%`;

/** "13 of 20 came through: 65 % (41 to 85)". */
export function shareWords({ alive, dead, outside }: Share): string {
  const all = alive + dead;
  if (all === 0) return 'No outcome written down';
  const { low, high } = clopperPearson(alive, all);
  const besides = outside > 0 ? `, and ${outside} lost from outside` : '';
  return `${alive} of ${all} came through: ${percent(alive / all)} (${Math.round(100 * low)} to ${Math.round(100 * high)})${besides}`;
}

const SMALL_NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
] as const;

/** "three": small numbers as words, larger ones as figures. */
export function numberWord(value: number): string {
  return SMALL_NUMBERS[value] ?? String(value);
}

/** How a line did beside its neighbours of the same yards and winters, and whether that is more than luck. */
export function scoreWords({ verdict, compared, expectedShare = 0, chanceBetter = 0 }: LineScore): string {
  const winters =
    compared.started === 1 ? 'one colony-winter' : `${numberWord(compared.started)} colony-winters`;
  const usual = Math.round(compared.started * expectedShare);
  const beside = `Beside other lines ${compared.survived} of ${compared.started} came through; at its neighbours' share it would be about ${usual}`;
  switch (verdict) {
    case 'no-neighbours':
      return 'No colony of another line stood beside it in a winter: nothing to compare with.';
    case 'too-few':
      return sentence(`${winters} beside neighbours: too few to tell the line from luck.`);
    case 'not-told-from-luck':
      return `${beside}. Not told from luck.`;
    case 'better':
      return `${beside}. Better than its neighbours, ${percent(chanceBetter)} sure.`;
    case 'worse':
      return `${beside}. Worse than its neighbours, ${percent(1 - chanceBetter)} sure.`;
  }
}

/** What the log-rank test says between groups, the answer first and a plain warning where the numbers are small. */
export function testWords({ pValue, smallNumbers }: LogRank, groups: 'lines' | 'yards'): string {
  const chance = pValue < 0.01 ? 'less than 1 time' : `about ${count(Math.round(100 * pValue), 'time')}`;
  const answer =
    pValue >= UNLIKELY
      ? `Taken all together, the ${groups} cannot be told apart yet.`
      : `Taken all together, the ${groups} differ by more than luck usually brings.`;
  const said = `${answer} Were they all alike, differences such as these would come up ${chance} in 100.`;
  const warning = ` Fewer than ${numberWord(FEWEST_EXPECTED_DEATHS)} losses are expected in at least one of them, so this figure is rough: read it as a hint and no more.`;
  return smallNumbers ? said + warning : said;
}

/** The figures of the test, for those who check them. */
export function testFigures({ chiSquare, degrees, pValue }: LogRank): string {
  const p = pValue < 0.001 ? 'below 0.001' : pValue.toFixed(pValue < 0.1 ? 3 : 2);
  const freedom = count(degrees, 'degree', 'degrees');
  return `Log-rank chi-square ${chiSquare.toFixed(1)} on ${freedom} of freedom, p\u00a0=\u00a0${p}`;
}

/** A difference that comes up more seldom than this between groups alike is not laid to luck (common practice). */
const UNLIKELY = 0.05;
