import type { PlainDay } from '../../journal/day.ts';
import type { Draft } from '../../journal/entry.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { Problem } from '../../journal/problems.ts';
import type { Projection } from '../../registry/project.ts';
import { castBoxes } from './boxes.ts';
import { type CastContext, castQueens } from './cast.ts';
import type { ColumnMapping } from './columns.ts';
import { compose, type PlannedDraft, type Scene } from './compose.ts';
import { castDams } from './dams.ts';
import { fillDown } from './fill-down.ts';
import { prepareRows } from './prepare.ts';
import { type Answers, answerTo, type Question } from './questions.ts';
import { readRow } from './read-row.ts';
import { type ReadRow, type RowProblem, rowProblem } from './row.ts';
import { columnSettings } from './settings.ts';
import { skippedBecause } from './skipped.ts';
import { summaryOf } from './summary.ts';
import type { Table } from './table.ts';
import { entryDays } from './timeline.ts';
import { blockContradictory, contentOf, contentsOf } from './trial.ts';

export type RowStatus =
  /** All of it is taken in. */
  | 'ready'
  /** Taken in, with cells kept as notes; see its problems. */
  | 'partly'
  /** Left out until its problems are solved. */
  | 'problem'
  /** On record already. */
  | 'same'
  /** Left out by the keeper. */
  | 'left-out'
  /** Holds no records: a header, totals. */
  | 'skipped';

export interface PlannedRow {
  readonly line: number;
  readonly status: RowStatus;
  readonly problems: readonly RowProblem[];
  /** What is taken from it, in words. */
  readonly summary: string;
  readonly queen?: QueenId;
  readonly colony?: ColonyId;
}

/** What a table would bring. Nothing is written until the keeper accepts; then the drafts go to the store as one action. */
export interface IntakePlan {
  readonly drafts: readonly Draft[];
  readonly rows: readonly PlannedRow[];
  readonly questions: readonly Question[];
  /** Problems of the table as a whole. */
  readonly problems: readonly Problem[];
}

export interface IntakeOptions {
  readonly today: PlainDay;
  readonly newId: () => string;
  readonly answers: Answers;
  /** Rows that the keeper leaves out. */
  readonly leaveOut: ReadonlySet<number>;
}

/**
 * Plans what a table brings into the records. Rows with problems stay out, and the rest is planned as if they were not
 * there, until nothing contradicts the records or itself.
 */
export function planIntake(
  table: Table,
  mapping: readonly ColumnMapping[],
  projection: Projection,
  options: IntakeOptions,
): IntakePlan {
  const problems = tableProblems(table, mapping);
  const blocked = new Map<number, RowProblem[]>();
  for (let round = 0; round <= table.rows.length; round += 1) {
    const attempt = planOnce(table, mapping, projection, options, blocked);
    const { scene, drafts } = attempt;
    if (blockContradictory(scene.rows, drafts, projection, options, blocked)) continue;
    return finished(table, attempt, blocked, options, problems);
  }
  throw new Error('The planning of a table did not come to rest.');
}

interface Attempt {
  readonly scene: Scene;
  readonly read: readonly ReadRow[];
  readonly drafts: readonly PlannedDraft[];
  readonly questions: readonly Question[];
}

function planOnce(
  table: Table,
  mapping: readonly ColumnMapping[],
  projection: Projection,
  { today, newId, answers, leaveOut }: IntakeOptions,
  blocked: ReadonlyMap<number, readonly RowProblem[]>,
): Attempt {
  const settings = columnSettings(table, mapping, answers, today);
  const asked = new Map(settings.questions.map((question) => [question.id, question]));
  const context: CastContext = {
    registry: projection.registry,
    newId,
    ask: (question) => {
      asked.set(question.id, question);
      return answerTo(question, answers);
    },
  };
  const records = table.rows.filter((row) => skippedBecause(table, row) === undefined);
  const read = fillDown(records, mapping, context.ask)
    .filter(({ line }) => !leaveOut.has(line))
    .map((row) => readRow(row, mapping, settings, today));
  for (const row of read) checkSubject(row);
  const rows = read.filter((row) => !blocked.has(row.line) && !row.problems.some(({ blocks }) => blocks));
  const cast = castQueens(rows, context);
  castDams(cast, context, today);
  prepareRows(rows, cast, context, today);
  const entered = entryDays(cast, today);
  const boxes = castBoxes(rows, cast, entered, context, today);
  const scene: Scene = { rows, cast, boxes, entered, context, today };
  const onRecord = contentsOf(projection);
  const drafts = compose(scene).filter(({ draft }) => !onRecord.has(contentOf(draft)));
  return { scene, read, drafts, questions: [...asked.values()] };
}

function checkSubject(row: ReadRow): void {
  if (row.queen || row.colony || row.dam?.is === 'named') return;
  row.problems.push(
    rowProblem(row.line, undefined, {
      found: row.notes[0] ?? 'neither a queen nor a box',
      because: 'Nothing in this row says which queen or which box it is about.',
      remedy: 'Name the queen or the box, or leave the row out.',
      blocks: true,
    }),
  );
}

function tableProblems(table: Table, mapping: readonly ColumnMapping[]): readonly Problem[] {
  const named = mapping.some(({ field }) => field === 'queen' || field === 'colony' || field === 'dam');
  if (table.rows.length > 0 && named) return [];
  return [
    {
      code: 'column-missing',
      where: 'The table',
      found: table.rows.length === 0 ? 'no rows' : 'no column of queens or boxes',
      because:
        table.rows.length === 0
          ? 'There is nothing to bring in.'
          : 'It is not known which column names the queens or the boxes.',
      remedy:
        table.rows.length === 0
          ? 'Paste the cells of the table, its header with them.'
          : 'Say for one column that it holds the queens, or the labels of the boxes.',
    },
  ];
}

function finished(
  table: Table,
  { scene, read, drafts, questions }: Attempt,
  blocked: ReadonlyMap<number, readonly RowProblem[]>,
  { leaveOut }: IntakeOptions,
  problems: readonly Problem[],
): IntakePlan {
  const withDrafts = new Set(drafts.flatMap(({ lines }) => lines));
  const byLine = new Map(read.map((row) => [row.line, row]));
  const rows = table.rows.map(({ line, cells }): PlannedRow => {
    const row = byLine.get(line);
    const skipped = skippedBecause(table, { line, cells });
    if (!row)
      return {
        line,
        status: leaveOut.has(line) ? 'left-out' : 'skipped',
        problems: [],
        summary: skipped ?? '',
      };
    const all = [
      ...row.problems,
      ...(blocked.get(line) ?? []).filter((each) => !row.problems.includes(each)),
    ];
    if (all.some(({ blocks }) => blocks)) return { line, status: 'problem', problems: all, summary: '' };
    const queen = scene.cast.ofRow.get(line);
    const box = scene.boxes.ofRow.get(line);
    const known = queen?.known !== undefined || box?.known !== undefined;
    const status = !withDrafts.has(line) && known ? 'same' : all.length > 0 ? 'partly' : 'ready';
    return {
      line,
      status,
      problems: all,
      summary: summaryOf(row, queen, box),
      ...(queen ? { queen: queen.id } : {}),
      ...(box ? { colony: box.id } : {}),
    };
  });
  return { drafts: drafts.map(({ draft }) => draft), rows, questions, problems };
}
