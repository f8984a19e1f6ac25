import { groupBy, pushTo } from '../../../graph/grouping.ts';
import { firstDay, yearOf } from '../../journal/day.ts';
import type { QueenId } from '../../journal/ids.ts';
import { queenTitle } from '../../registry/queries.ts';
import type { Queen, Registry } from '../../registry/state.ts';
import { knownQueens, knownUnnamed } from './known.ts';
import type { Question } from './questions.ts';
import type { ReadRow } from './row.ts';
import { labelKey, type NamedQueen, nameKey } from './values/name.ts';

/** A queen of the table: on record already, or to be entered. */
export interface PlannedQueen {
  readonly id: QueenId;
  readonly known?: Queen;
  readonly name?: string;
  /** The year that tells her from others of her name. */
  readonly year?: number;
  /** Rows that speak of her. A queen who is only named as a dam has none. */
  readonly rows: ReadRow[];
  dams: readonly PlannedDam[];
}

export interface PlannedDam {
  readonly queen: PlannedQueen;
  readonly probability: number;
}

/** All queens of a table, and the queen of each row. */
export interface Cast {
  readonly queens: PlannedQueen[];
  readonly ofRow: Map<number, PlannedQueen>;
  /** Queens by the key of their name. */
  readonly byName: Map<string, PlannedQueen[]>;
}

/** What resolving names needs from the outside. */
export interface CastContext {
  readonly registry: Registry;
  readonly newId: () => string;
  /** Puts a question to the keeper; the answer, else the guess. */
  readonly ask: (question: Question) => string | undefined;
}

/** Tells the queens of the rows apart: by name, and by year where a name comes twice. */
export function castQueens(rows: readonly ReadRow[], context: CastContext): Cast {
  const cast: Cast = { queens: [], ofRow: new Map(), byName: new Map() };
  const byName = groupBy(
    rows.filter((row) => row.queen !== undefined),
    (row) => nameKey(row.queen?.name ?? ''),
  );
  for (const group of byName.values()) castName(cast, group, context);
  castUnnamed(cast, rows, context);
  return cast;
}

export function yearOfRow(row: ReadRow): number | undefined {
  return row.queen?.year ?? (row.born ? yearOf(row.born) : undefined);
}

function castName(cast: Cast, group: readonly ReadRow[], context: CastContext): void {
  const byYear = groupBy(group, yearOfRow);
  const dated: PlannedQueen[] = [];
  for (const [year, rows] of byYear) {
    if (year !== undefined) dated.push(...castSame(cast, rows, year, context));
  }
  const undated = byYear.get(undefined) ?? [];
  if (dated.length === 0) {
    castSame(cast, undated, undefined, context);
    return;
  }
  for (const row of undated) {
    const chosen = dated.length === 1 ? dated[0] : whichOfName(row, dated, context);
    if (chosen) assign(cast, chosen, row);
  }
}

/** Rows of one name and year: one queen, unless they stand in several boxes and nothing dates a move. */
function castSame(
  cast: Cast,
  rows: ReadRow[],
  year: number | undefined,
  context: CastContext,
): readonly PlannedQueen[] {
  const first = rows[0];
  if (!first) return [];
  const boxes = groupBy(rows, (row) => labelKey(row.colony ?? ''));
  boxes.delete('');
  const split =
    boxes.size > 1 && rows.every((row) => row.date === undefined) && asksSplit(rows, boxes.size, context);
  const groups = split ? [...boxes.values()] : [rows];
  // A row without a box cannot tell which of them it means; it goes to the first.
  if (split) groups[0]?.push(...rows.filter((row) => row.colony === undefined));
  return groups.map((group) => {
    const queen = addQueen(cast, first.queen, year, context, split ? undefined : first);
    for (const row of group) assign(cast, queen, row);
    return queen;
  });
}

function asksSplit(rows: readonly ReadRow[], boxes: number, { ask }: CastContext): boolean {
  const first = rows[0];
  const lines = rows.map(({ line }) => line).join(', ');
  const answer = ask({
    id: `one-queen:${first?.line}`,
    text: `${first?.queen?.name} stands in rows ${lines}, in ${boxes} boxes. Is that one queen or several of one name?`,
    options: [
      { value: 'several', words: 'Several queens of one name, one in each box' },
      { value: 'one', words: 'One queen' },
    ],
    guess: 'several',
    ...(first ? { line: first.line } : {}),
  });
  return answer !== 'one';
}

function whichOfName(
  row: ReadRow,
  queens: readonly PlannedQueen[],
  { ask }: CastContext,
): PlannedQueen | undefined {
  const sorted = [...queens].sort((a, b) => (b.year ?? 0) - (a.year ?? 0));
  const before = sorted.find(({ year }) => row.date !== undefined && (year ?? 0) <= yearOf(row.date));
  const answer = ask({
    id: `which-queen:${row.line}`,
    text: `Which ${row.queen?.name} does row ${row.line} speak of?`,
    options: sorted.map(({ year, id }, index) => ({
      value: String(year ?? id),
      words: `${queens[0]?.name} of ${year ?? `row ${index}`}`,
    })),
    guess: String((before ?? sorted[0])?.year),
    line: row.line,
  });
  return queens.find(({ year, id }) => String(year ?? id) === answer) ?? sorted[0];
}

function assign(cast: Cast, queen: PlannedQueen, row: ReadRow): void {
  queen.rows.push(row);
  cast.ofRow.set(row.line, queen);
}

/** Adds a queen of a name: the one on record where name and year fit, else a new one. */
export function addQueen(
  cast: Cast,
  named: NamedQueen | undefined,
  year: number | undefined,
  context: CastContext,
  row: ReadRow | undefined,
  unnamed?: Queen,
): PlannedQueen {
  const known = named && row ? knownQueen(named, year, row, cast, context) : unnamed;
  const queen: PlannedQueen = {
    id: known?.id ?? (context.newId() as QueenId),
    ...(known ? { known } : {}),
    ...(named ? { name: named.name } : {}),
    ...(year === undefined ? {} : { year }),
    rows: [],
    dams: [],
  };
  join(cast, queen);
  return queen;
}

/** Makes a queen one of the cast. */
export function join(cast: Cast, queen: PlannedQueen): void {
  cast.queens.push(queen);
  if (queen.name === undefined) return;
  pushTo(cast.byName, nameKey(queen.name), queen);
}

function knownQueen(
  named: NamedQueen,
  year: number | undefined,
  row: ReadRow,
  cast: Cast,
  { registry, ask }: CastContext,
): Queen | undefined {
  const taken = new Set((cast.byName.get(nameKey(named.name)) ?? []).map(({ id }) => id));
  const all = knownQueens(registry, named, year).filter(({ id }) => !taken.has(id));
  // One whose year is on record and fits goes before those of whom no year is known.
  const dated = all.filter(({ born }) => year !== undefined && born !== undefined);
  const found = dated.length > 0 ? dated : all;
  if (found.length < 2) return found[0];
  const answer = ask({
    id: `known-queen:${row.line}`,
    text: `Several queens on record are called ${named.name}. Which one is meant in row ${row.line}?`,
    options: [
      ...found.map((queen) => ({
        value: queen.id,
        words: `${queenTitle(queen)}, on record since ${queen.entries[0]?.day ?? 'long'}`,
      })),
      { value: 'new', words: 'Another queen of this name' },
    ],
    guess: found.at(-1)?.id ?? 'new',
    line: row.line,
  });
  return found.find(({ id }) => id === answer);
}

/** Rows that tell of a queen without a name: her dam, her year or her mark. */
function castUnnamed(cast: Cast, rows: readonly ReadRow[], context: CastContext): void {
  const unnamed = new Map<string, PlannedQueen>();
  for (const row of rows) {
    if (row.queen || (row.dam?.is !== 'named' && !row.born && row.mark?.is !== 'marked')) continue;
    const dams = row.dam?.is === 'named' ? row.dam.dams.map(({ name }) => nameKey(name)).join('|') : '';
    const key = row.colony ? `${labelKey(row.colony)} ${dams} ${yearOfRow(row) ?? ''}` : `row ${row.line}`;
    let queen = unnamed.get(key);
    if (!queen) {
      const taken = new Set(cast.queens.map(({ id }) => id));
      const known = knownUnnamed(taken, row, yearOfRow(row), context.registry);
      queen = addQueen(cast, undefined, yearOfRow(row), context, undefined, known);
      unnamed.set(key, queen);
    }
    assign(cast, queen, row);
  }
}

/** The first year she can be told by, for comparing with her daughters. */
export function tellingYear(queen: PlannedQueen): number | undefined {
  const born = queen.known?.born?.first ?? queen.rows.find((row) => row.born)?.born;
  if (queen.year !== undefined) return queen.year;
  if (born) return yearOf(born);
  const days = queen.rows
    .flatMap((row) => row.date ?? [])
    .map(firstDay)
    .sort();
  return days[0] === undefined ? undefined : yearOf(days[0]);
}
