import type { LineVerdict } from '../../graph/merit/survival/line-scores.ts';
import { count } from '../parts/words.ts';
import type { LineSummary } from './summaries.ts';
import { monthText } from './words.ts';

/** A line in words. */

/** "Hangs on 3 queens", "Hangs on one queen", "No laying queen", "No queen in these yards". */
export function hangsOn({ living, expected, unknown }: LineSummary): string {
  if (living === 0) {
    if (expected > 0) return 'No laying queen';
    return unknown > 0 ? 'No queen in these yards' : 'No queen left';
  }
  return `Hangs on ${living === 1 ? 'one queen' : count(living, 'queen')}`;
}

/** "2 awaited, 1 only probably of this line"; empty when there is nothing to say. */
export function besides({ living, livingProbable, expected }: LineSummary): string {
  const awaited = expected > 0 ? [`${expected} awaited`] : [];
  const probable = livingProbable === living ? 'by a probable dam' : `${livingProbable} of them probably`;
  return [...(livingProbable > 0 ? [probable] : []), ...awaited].join('; ');
}

/** "9 of 12 came through 4 winters": a queen counts once for each winter. */
export function survived({ winters }: LineSummary): string {
  const wentIn = winters.reduce((sum, winter) => sum + winter.wentIn, 0);
  const cameOut = winters.reduce((sum, winter) => sum + winter.cameOut, 0);
  const over = winters.length === 1 ? 'one winter' : count(winters.length, 'winter');
  return `${over}: ${cameOut} of ${wentIn} through`;
}

const VERDICTS: Readonly<Record<LineVerdict, string>> = {
  'no-neighbours': 'nobody to compare it with',
  'too-few': 'too few to tell from luck',
  'not-told-from-luck': 'not told from luck',
  better: 'better than its neighbours',
  worse: 'worse than its neighbours',
};

/** What the winters of a line say beside those of its neighbours: "too few to tell from luck". */
export function verdict({ score }: LineSummary): string | undefined {
  return score && VERDICTS[score.verdict];
}

/** How a line without a laying or awaited queen stands: ended, or where its queens are is not known. */
export function ended({ ended: day, unknown }: LineSummary): string {
  if (day !== undefined) return `Ended in ${monthText(day)}`;
  return `Where ${unknown === 1 ? 'one queen is' : `${count(unknown, 'queen')} are`} now is not known`;
}

/** The lines at a glance, as the sentence under the heading. */
export function linesLead(lines: readonly LineSummary[]): string {
  const alive = lines.filter(({ living }) => living > 0);
  const sole = alive.filter(({ living }) => living === 1);
  if (alive.length === 0) return 'No line has a laying queen.';
  const living = alive.length === 1 ? 'One line is alive' : `${alive.length} lines are alive`;
  const queens = alive.reduce((sum, { living }) => sum + living, 0);
  const hanging =
    sole.length === 0
      ? ''
      : sole.length === 1
        ? ` ${name(sole[0])} hangs on one queen.`
        : ` ${sole.length} of them hang on one queen each.`;
  return `${living}, on ${count(queens, 'queen')}.${hanging}`;
}

function name(line: LineSummary | undefined): string {
  return line ? `Line ${line.letter} (${line.title})` : '';
}
