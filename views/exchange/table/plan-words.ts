import type { IntakePlan, PlannedRow, RowStatus } from '../../../src/exchange/intake/index.ts';
import type { RoughDay } from '../../../src/journal/day.ts';
import { dayText } from '../../../src/journal/day-words.ts';
import type { Draft } from '../../../src/journal/entry.ts';
import { list } from '../../parts/words.ts';
import { counted } from '../counted.ts';

/** What a plan would write, in words for the keeper. */

export const STATUS_WORDS: Readonly<Record<RowStatus, string>> = {
  ready: 'taken in',
  partly: 'taken in, some cells as notes',
  problem: 'stays out until mended',
  same: 'on record already',
  'left-out': 'left out by you',
  skipped: 'holds no records',
};

export type StatusCounts = Readonly<Record<RowStatus, number>>;

export function countStatus(rows: readonly PlannedRow[]): StatusCounts {
  const counts = { ready: 0, partly: 0, problem: 0, same: 0, 'left-out': 0, skipped: 0 };
  for (const { status } of rows) counts[status] += 1;
  return counts;
}

/** "8 rows are taken in, 2 of them with cells kept as notes; 1 stays out until mended." */
export function statusSentence(counts: StatusCounts): string {
  const good = counts.ready + counts.partly;
  const partly = counts.partly > 0 ? `, ${counts.partly} of them with cells kept as notes` : '';
  const rest = [
    counts.problem > 0
      ? `${counted(counts.problem, 'row')} ${counts.problem === 1 ? 'stays' : 'stay'} out until mended`
      : '',
    counts.same > 0 ? `${counts.same} ${counts.same === 1 ? 'is' : 'are'} on record already` : '',
    counts['left-out'] > 0 ? `${counts['left-out']} left out by you` : '',
    counts.skipped > 0 ? `${counts.skipped} ${counts.skipped === 1 ? 'holds' : 'hold'} no records` : '',
  ].filter(Boolean);
  const first =
    good === 0
      ? 'No row can be taken in yet'
      : `${counted(good, 'row')} ${good === 1 ? 'is' : 'are'} taken in${partly}`;
  return `${[first, ...rest].join('; ')}.`;
}

const COUNTED: readonly (readonly [kinds: readonly Draft['kind'][], one: string, many: string])[] = [
  [['yard-opened'], 'yard', 'yards'],
  [['queen-entered', 'queen-found', 'queen-expected'], 'queen', 'queens'],
  [['colony-started'], 'box', 'boxes'],
  [['winter-outcome'], 'winter outcome', 'winter outcomes'],
  [['inspection'], 'inspection', 'inspections'],
  [['mite-count'], 'mite count', 'mite counts'],
  [['harvest'], 'harvest', 'harvests'],
  [['queen-lost', 'colony-ended'], 'loss', 'losses'],
  [['note'], 'note', 'notes'],
];

/** "10 queens, 9 boxes and 8 winter outcomes": what is new by kind; what is left is counted as other entries. */
export function draftsSentence({ drafts }: Pick<IntakePlan, 'drafts'>): string {
  const left = new Map<string, number>();
  for (const { kind } of drafts) left.set(kind, (left.get(kind) ?? 0) + 1);
  const parts = COUNTED.flatMap(([kinds, one, many]) => {
    const sum = kinds.reduce((total, kind) => total + (left.get(kind) ?? 0), 0);
    for (const kind of kinds) left.delete(kind);
    return sum > 0 ? [counted(sum, one, many)] : [];
  });
  const other = [...left.values()].reduce((sum, each) => sum + each, 0);
  if (other > 0) parts.push(`${counted(other, 'other entry', 'other entries')} about them`);
  return parts.length === 0 ? 'nothing' : list(parts);
}

/**
 * What is written of a row, with the records of one day put together: "gentle 3 (2024-05-14); calm 4 (2024-05-14)"
 * becomes "14 May 2024: gentle 3, calm 4".
 */
export function rowWords(summary: string): string {
  const parts: { readonly day: string | undefined; readonly words: string[] }[] = [];
  for (const part of summary.split('; ')) {
    const dated = /^(.*) \((\d{4}(?:-\d\d){0,2})\)$/.exec(part);
    const [day, words] = [dated?.[2], dated?.[1] ?? part];
    const last = parts.at(-1);
    if (day !== undefined && last?.day === day) last.words.push(words);
    else parts.push({ day, words: [words] });
  }
  return parts
    .map(({ day, words }) =>
      day === undefined ? words.join('; ') : `${dayText(day as RoughDay)}: ${words.join(', ')}`,
    )
    .join('; ');
}

/** A delimiter in words. */
export function delimiterWords(delimiter: string): string {
  if (delimiter === '\t') return 'tabs';
  if (delimiter === ';') return 'semicolons';
  return delimiter === '|' ? 'upright bars' : 'commas';
}
