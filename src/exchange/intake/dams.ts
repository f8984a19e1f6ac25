import type { PlainDay } from '../../journal/day.ts';
import { headOn } from '../../registry/queries.ts';
import {
  addQueen,
  type Cast,
  type CastContext,
  join,
  type PlannedDam,
  type PlannedQueen,
  tellingYear,
} from './cast.ts';
import { knownQueens } from './known.ts';
import { type ReadRow, rowProblem } from './row.ts';
import { type NamedQueen, nameKey, type ReadDam } from './values/name.ts';

/** How likely the dam is where the table puts a question mark behind her, if the keeper says "probably". */
export const DOUBTFUL_PROBABILITY = 0.8;

/**
 * Finds the dam of every queen by the name that her row gives: another queen of the table, a queen on record, or the
 * queen of a box of that label. A name that is none of these becomes a queen of whom nothing else is known.
 */
export function castDams(cast: Cast, context: CastContext, today: PlainDay): void {
  for (const queen of [...cast.queens]) {
    // What is on record of her dam stands; a table says nothing new there.
    if (queen.known?.parentage) continue;
    const telling = queen.rows.filter((row) => row.dam?.is === 'named');
    const row = telling[0];
    if (row?.dam?.is !== 'named') continue;
    const dams = row.dam.dams.map((named) => damOf(cast, context, queen, named, row, today));
    queen.dams = weighed(dams, row.dam, row, context);
    for (const other of telling.slice(1)) noteOther(row, other);
  }
  for (const queen of cast.queens) cutRing(queen);
}

function noteOther(row: ReadRow, other: ReadRow): void {
  const names = (read: ReadRow) =>
    read.dam?.is === 'named' ? read.dam.dams.map(({ name }) => nameKey(name)).join('|') : '';
  if (names(row) === names(other)) return;
  other.problems.push(
    rowProblem(other.line, undefined, {
      found: other.dam?.is === 'named' ? other.dam.dams.map(({ name }) => name).join(' or ') : '',
      because: `Row ${row.line} names another dam for the same queen; that one is kept.`,
      remedy: 'Correct one of the two rows, or tell the two queens apart by their years.',
      blocks: false,
    }),
  );
}

function weighed(
  dams: readonly PlannedQueen[],
  read: Extract<ReadDam, { is: 'named' }>,
  row: ReadRow,
  { ask }: CastContext,
): readonly PlannedDam[] {
  const unique = [...new Set(dams)];
  const sum = read.doubtful ? doubt(row, read, ask) : 1;
  return sum === 0 ? [] : unique.map((queen) => ({ queen, probability: sum / unique.length }));
}

function doubt(row: ReadRow, read: Extract<ReadDam, { is: 'named' }>, ask: CastContext['ask']): number {
  const name = read.dams.map((dam) => dam.name).join(' or ');
  const answer = ask({
    id: `doubtful-dam:${row.line}`,
    text: `Row ${row.line} is not sure of the dam ${name}. How is it to be kept?`,
    options: [
      { value: 'probable', words: `Probably ${name} (${DOUBTFUL_PROBABILITY * 100} %)` },
      { value: 'firm', words: `${name}, for sure` },
      { value: 'unknown', words: 'Dam unknown' },
    ],
    guess: 'probable',
    line: row.line,
  });
  return answer === 'firm' ? 1 : answer === 'unknown' ? 0 : DOUBTFUL_PROBABILITY;
}

function damOf(
  cast: Cast,
  context: CastContext,
  daughter: PlannedQueen,
  named: NamedQueen,
  row: ReadRow,
  today: PlainDay,
): PlannedQueen {
  const key = nameKey(named.name);
  const inTable = (cast.byName.get(key) ?? []).filter(
    (queen) =>
      queen !== daughter &&
      (named.year === undefined || tellingYear(queen) === undefined || tellingYear(queen) === named.year),
  );
  const fitting = olderThan(inTable, daughter);
  if (fitting.length > 1) return whichDam(fitting, named, row, context);
  const only =
    fitting[0] ??
    onRecord(cast, context, daughter, named) ??
    (named.year === undefined ? inBox(cast, context, daughter, named, today) : undefined);
  return only ?? addQueen(cast, named, named.year, context, undefined);
}

/** Those not younger than the daughter; all of them when none is older, so that the contradiction is seen. */
function olderThan(queens: readonly PlannedQueen[], daughter: PlannedQueen): readonly PlannedQueen[] {
  const year = tellingYear(daughter);
  const older = queens.filter((queen) => year === undefined || (tellingYear(queen) ?? year) <= year);
  const before = older.filter((queen) => year !== undefined && (tellingYear(queen) ?? year) < year);
  const best = before.length > 0 ? before : older;
  return best.length > 0 ? best : queens;
}

function whichDam(
  queens: readonly PlannedQueen[],
  named: NamedQueen,
  row: ReadRow,
  { ask }: CastContext,
): PlannedQueen {
  const sorted = [...queens].sort((a, b) => (tellingYear(b) ?? 0) - (tellingYear(a) ?? 0));
  // Where her daughter stands in the box of one of them, that one is the likeliest: she was superseded there.
  const there = sorted.find((queen) => queen.rows.some((each) => each.colony && each.colony === row.colony));
  const likely = there ?? sorted[0];
  const value = (queen: PlannedQueen) => String(queen.rows[0]?.line ?? sorted.indexOf(queen));
  const words = (queen: PlannedQueen) => {
    const year = tellingYear(queen);
    const line = queen.rows[0]?.line;
    return `${queen.name}${year === undefined ? '' : ` of ${year}`}${line === undefined ? '' : `, row ${line}`}`;
  };
  const answer = ask({
    id: `which-dam:${row.line}`,
    text: `Which ${named.name} is the dam in row ${row.line}?`,
    options: sorted.map((queen) => ({ value: value(queen), words: words(queen) })),
    ...(likely ? { guess: value(likely) } : {}),
    line: row.line,
  });
  const chosen = sorted.find((queen) => value(queen) === answer) ?? likely;
  if (!chosen) throw new Error('A choice among no queens.');
  return chosen;
}

function onRecord(
  cast: Cast,
  { registry }: CastContext,
  daughter: PlannedQueen,
  named: NamedQueen,
): PlannedQueen | undefined {
  const known = knownQueens(registry, named, named.year).filter(({ id }) => id !== daughter.id);
  const planned = known.map((queen) => plannedFor(cast, queen));
  return olderThan(planned, daughter).at(-1);
}

/** The queen on record as one of the cast. */
function plannedFor(cast: Cast, known: NonNullable<PlannedQueen['known']>): PlannedQueen {
  const there = cast.queens.find(({ id }) => id === known.id);
  if (there) return there;
  const queen: PlannedQueen = {
    id: known.id,
    known,
    ...(known.name ? { name: known.name } : {}),
    rows: [],
    dams: [],
  };
  join(cast, queen);
  return queen;
}

/** The queen of the box of this label: "daughter of 3" where 3 is a box. */
function inBox(
  cast: Cast,
  { registry }: CastContext,
  daughter: PlannedQueen,
  named: NamedQueen,
  today: PlainDay,
): PlannedQueen | undefined {
  const key = nameKey(named.name.replace(/^(hive|box|colony|volk|stock|nr\.?|no\.?|#)\s*/i, ''));
  if (key === '') return undefined;
  const boxKey = (label: string) =>
    nameKey(label.replace(/^(hive|box|colony|volk|stock|nr\.?|no\.?|#)\s*/i, ''));
  const inTable = cast.queens.filter(
    (queen) =>
      queen !== daughter && queen.rows.some((row) => row.colony !== undefined && boxKey(row.colony) === key),
  );
  const older = olderThan(inTable, daughter);
  const youngest = [...older].sort((a, b) => (tellingYear(b) ?? 0) - (tellingYear(a) ?? 0))[0];
  if (youngest) return youngest;
  const colony = [...registry.colonies.values()].find(({ label }) => boxKey(label) === key);
  const head = colony && headOn(registry, colony, today);
  return head && plannedFor(cast, head);
}

/** A queen who would descend from herself loses the dam that closes the ring; her row says so. */
function cutRing(start: PlannedQueen): void {
  const waiting = start.dams.map(({ queen }) => queen);
  const seen = new Set<PlannedQueen>();
  for (let queen = waiting.pop(); queen; queen = waiting.pop()) {
    if (queen === start) {
      const row = start.rows[0];
      row?.problems.push(
        rowProblem(row.line, undefined, {
          found: start.dams.map((dam) => dam.queen.name ?? 'a queen without a name').join(', '),
          because: 'By this table she would descend from her own daughter.',
          remedy: 'Correct the dam, or tell queens of one name apart by their years.',
          blocks: true,
        }),
      );
      start.dams = [];
      return;
    }
    if (seen.has(queen)) continue;
    seen.add(queen);
    waiting.push(...queen.dams.map((dam) => dam.queen));
  }
}
