import { firstDay, lastDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { Draft } from '../../journal/entry.ts';
import type { Parentage } from '../../journal/entry-parts.ts';
import { headOn } from '../../registry/queries.ts';
import type { Queen } from '../../registry/state.ts';
import type { PlannedBox } from './boxes.ts';
import type { Cast, PlannedQueen } from './cast.ts';
import { type PlannedDraft, RANK, type Scene } from './compose.ts';
import { rowProblem } from './row.ts';

/** The drafts that enter queens, put them into boxes and mark them; dams before their daughters. */
export function composeQueens(scene: Scene): readonly PlannedDraft[] {
  return damsFirst(scene.cast).flatMap((queen) =>
    queen.known ? composeKnown(scene, queen) : composeNew(scene, queen),
  );
}

/** Every queen after her dams; no recursion, since lines may be long. Rings were cut before. */
function damsFirst(cast: Cast): readonly PlannedQueen[] {
  const ordered = new Set<PlannedQueen>();
  const opened = new Set<PlannedQueen>();
  const waiting = [...cast.queens].reverse();
  for (let queen = waiting.at(-1); queen; queen = waiting.at(-1)) {
    if (opened.has(queen)) {
      waiting.pop();
      ordered.add(queen);
      continue;
    }
    opened.add(queen);
    waiting.push(...queen.dams.map((dam) => dam.queen).filter((dam) => !opened.has(dam)));
  }
  return [...ordered];
}

function linesOf(queen: PlannedQueen): readonly number[] {
  return queen.rows.map(({ line }) => line);
}

function composeNew(scene: Scene, queen: PlannedQueen): readonly PlannedDraft[] {
  const day = scene.entered.get(queen) ?? (scene.today as string as RoughDay);
  const lines = linesOf(queen);
  const boxes = scene.boxes.ofQueen.get(queen) ?? [];
  const first = boxes[0];
  const follows = first !== undefined && hasHead(scene, first, queen, day);
  const enter = follows ? found(queen, first, day) : entered(queen, first, day);
  const drafts: PlannedDraft[] = [{ draft: enter, lines, rank: RANK.queen }];
  const mark = markOf(queen);
  if (follows && mark) {
    drafts.push({ draft: { kind: 'queen-marked', day, queen: queen.id, ...mark }, lines, rank: RANK.mark });
  }
  return [...drafts, ...boxes.slice(1).flatMap((box) => moveInto(scene, queen, box))];
}

/** Whether another queen heads the box when she comes: the one before her in the table, or the one on record. */
function hasHead(
  { cast, context, entered: days }: Scene,
  box: PlannedBox,
  queen: PlannedQueen,
  day: RoughDay,
): boolean {
  const before = box.heads[box.heads.indexOf(queen) - 1];
  if (before) {
    const lost = before.rows.some(
      (row) =>
        cast.ofRow.get(row.line) === before &&
        row.outcome?.is === 'queen-lost' &&
        row.ended !== undefined &&
        lastDay(row.ended) <= lastDay(day),
    );
    return !lost && firstDay(days.get(before) ?? day) <= firstDay(day);
  }
  return box.known !== undefined && headOn(context.registry, box.known, lastDay(day)) !== undefined;
}

function entered(queen: PlannedQueen, box: PlannedBox | undefined, day: RoughDay): Draft<'queen-entered'> {
  const born = bornOf(queen);
  const parentage = parentageOf(queen);
  const background = queen.rows.find((row) => row.background)?.background;
  const from = queen.rows.find((row) => row.origin)?.origin;
  const mark = markOf(queen);
  return {
    kind: 'queen-entered',
    day,
    queen: queen.id,
    ...(queen.name ? { name: queen.name } : {}),
    ...(box ? { colony: box.id, laying: true } : {}),
    ...(born ? { born } : {}),
    ...(parentage ? { parentage } : {}),
    ...(background ? { background } : {}),
    ...(from ? { from } : {}),
    ...mark,
  };
}

/** She stands where another stood. Who her dam is the table says, or nobody: it is not taken from the box. */
function found(queen: PlannedQueen, box: PlannedBox, day: RoughDay): Draft<'queen-found'> {
  const born = bornOf(queen);
  const before = box.heads[box.heads.indexOf(queen) - 1];
  return {
    kind: 'queen-found',
    day,
    queen: queen.id,
    colony: box.id,
    ...(before ? { insteadOf: before.id } : {}),
    ...(queen.name ? { name: queen.name } : {}),
    parentage: parentageOf(queen) ?? { dams: [], evidence: 'old-record' },
    ...(born ? { born } : {}),
  };
}

function bornOf(queen: PlannedQueen): RoughDay | undefined {
  const born = queen.rows.find((row) => row.born)?.born;
  return born ?? (queen.year === undefined ? undefined : (String(queen.year) as RoughDay));
}

function parentageOf(queen: PlannedQueen): Parentage | undefined {
  if (queen.dams.length === 0) return undefined;
  const dams = queen.dams.map((dam) => ({ queen: dam.queen.id, probability: dam.probability }));
  return { dams, evidence: 'old-record' };
}

function markOf(queen: PlannedQueen): Pick<Draft<'queen-marked'>, 'colour' | 'mark'> | undefined {
  const mark = queen.rows.find((row) => row.mark?.is === 'marked')?.mark;
  if (mark?.is !== 'marked') return undefined;
  return { colour: mark.colour, ...(mark.number ? { mark: mark.number } : {}) };
}

function moveInto(scene: Scene, queen: PlannedQueen, box: PlannedBox): readonly PlannedDraft[] {
  const row = box.rows.find((each) => scene.cast.ofRow.get(each.line) === queen);
  if (!row) return [];
  if (!row.date) {
    row.problems.push(
      rowProblem(row.line, undefined, {
        found: `${queen.name ?? 'the queen'} in ${box.label}`,
        because: 'She stands in another box too, and no day says when she came here.',
        remedy: 'Give the row a date, or leave one of the two rows out.',
        blocks: true,
      }),
    );
    return [];
  }
  const draft: Draft = { kind: 'queen-moved', day: row.date, queen: queen.id, to: box.id };
  return [{ draft, lines: [row.line], rank: RANK.queen }];
}

/** What the table adds to a queen on record: a dam, a mark, the box she is in. */
function composeKnown(scene: Scene, queen: PlannedQueen): readonly PlannedDraft[] {
  const known = queen.known;
  const row = queen.rows[0];
  if (!known || !row) return [];
  const lines = linesOf(queen);
  const since = known.entries[0]?.day ?? (scene.today as string as RoughDay);
  const drafts: PlannedDraft[] = [];
  const facts = newFacts(queen, known);
  if (Object.keys(facts).length > 0) {
    const day = notBefore(scene.entered.get(queen) ?? since, since);
    drafts.push({
      draft: { kind: 'queen-entered', day, queen: known.id, ...facts },
      lines,
      rank: RANK.queen,
    });
  }
  for (const box of scene.boxes.ofQueen.get(queen) ?? []) {
    if (!box.known) drafts.push(...moveInto(scene, queen, box));
  }
  return drafts;
}

/** What the table says of her and the records do not. Told without a colony, it fills in and changes nothing. */
function newFacts(queen: PlannedQueen, known: Queen): Partial<Draft<'queen-entered'>> {
  const told = entered(queen, undefined, '1900' as RoughDay);
  return {
    ...(told.born && !known.born ? { born: told.born } : {}),
    ...(told.parentage && !known.parentage ? { parentage: told.parentage } : {}),
    ...(told.background && !known.background ? { background: told.background } : {}),
    ...(told.colour && !known.mark ? { colour: told.colour, ...(told.mark ? { mark: told.mark } : {}) } : {}),
  };
}

function notBefore(day: RoughDay, since: RoughDay): RoughDay {
  const first: PlainDay = firstDay(since);
  return firstDay(day) < first ? since : day;
}
