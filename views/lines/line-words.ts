import type { LineSummary } from './summaries.ts';
import { monthText, queensText } from './words.ts';

/** A line in words. */

/** "Hangs on 3 queens, one of them probably; 2 awaited." */
export function hangsOn({ living, livingProbable, expected }: LineSummary): string {
  if (living === 0) return expected > 0 ? `No laying queen; ${expected} awaited` : 'No queen left';
  const probable =
    livingProbable === 0
      ? ''
      : livingProbable === living
        ? ', by a probable dam'
        : `, ${livingProbable} of them probably`;
  const awaited = expected > 0 ? `; ${expected} awaited` : '';
  return `Hangs on ${living === 1 ? 'one queen' : queensText(living)}${probable}${awaited}`;
}

/** "4 winters; 9 of 12 queens came through." */
export function survived({ winters }: LineSummary): string {
  const wentIn = winters.reduce((sum, winter) => sum + winter.wentIn, 0);
  const cameOut = winters.reduce((sum, winter) => sum + winter.cameOut, 0);
  const count = winters.length === 1 ? '1 winter' : `${winters.length} winters`;
  return `${count}: ${cameOut} of ${wentIn} came through`;
}

export function ended(line: LineSummary): string {
  return line.ended === undefined ? '' : `Ended in ${monthText(line.ended)}`;
}

/** The lines at a glance, as the sentence under the heading. */
export function linesLead(lines: readonly LineSummary[]): string {
  const alive = lines.filter(({ living }) => living > 0);
  const sole = alive.filter(({ living }) => living === 1);
  if (alive.length === 0) return 'No line has a laying queen.';
  const count = alive.length === 1 ? 'One line is alive' : `${alive.length} lines are alive`;
  const queens = alive.reduce((sum, { living }) => sum + living, 0);
  const hanging =
    sole.length === 0
      ? ''
      : sole.length === 1
        ? ` ${name(sole[0])} hangs on one queen.`
        : ` ${sole.length} of them hang on one queen each.`;
  return `${count}, on ${queensText(queens)}.${hanging}`;
}

function name(line: LineSummary | undefined): string {
  return line ? `Line ${line.letter} (${line.title})` : '';
}
