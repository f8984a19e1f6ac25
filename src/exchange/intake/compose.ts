import { groupBy } from '../../../graph/grouping.ts';
import { firstDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { Draft } from '../../journal/entry.ts';
import type { YardId } from '../../journal/ids.ts';
import type { Boxes, PlannedBox } from './boxes.ts';
import type { Cast, CastContext, PlannedQueen } from './cast.ts';
import { composeQueens } from './compose-queens.ts';
import { composeRecords } from './compose-records.ts';
import type { ReadRow } from './row.ts';
import { earliest } from './timeline.ts';
import { nameKey } from './values/name.ts';

/** A draft with the rows that it comes from, and its place among those of one day. */
export interface PlannedDraft {
  readonly draft: Draft;
  readonly lines: readonly number[];
  readonly rank: number;
}

/** What happens first of all that is written for one day. */
export const RANK = {
  yard: 0,
  colony: 1,
  winter: 2,
  queen: 3,
  mark: 4,
  record: 5,
  loss: 6,
  note: 7,
} as const;

export interface Scene {
  readonly rows: readonly ReadRow[];
  readonly cast: Cast;
  readonly boxes: Boxes;
  readonly entered: ReadonlyMap<PlannedQueen, RoughDay>;
  readonly context: CastContext;
  readonly today: PlainDay;
}

/** All drafts of a table, in the order in which it happened. */
export function compose(scene: Scene): readonly PlannedDraft[] {
  const drafts = [...composeYards(scene), ...composeQueens(scene), ...composeRecords(scene)];
  return drafts
    .map((each, index) => ({ each, index, day: firstDay(each.draft.day) }))
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.each.rank - b.each.rank || a.index - b.index))
    .map(({ each }) => each);
}

function composeYards({ boxes, context, today }: Scene): readonly PlannedDraft[] {
  const started = boxes.all.filter((box) => !box.known);
  const drafts: PlannedDraft[] = [];
  const yardOf = (box: PlannedBox) => box.yard ?? yardAnswer(context);
  for (const group of groupBy(started, (box) => nameKey(yardOf(box))).values()) {
    const name = group[0] ? yardOf(group[0]) : '';
    const known = [...context.registry.yards.values()].find((yard) => nameKey(yard.name) === nameKey(name));
    const opened = earliest(group.map(({ from }) => from)) ?? (today as string as RoughDay);
    const yard = known?.id ?? (context.newId() as YardId);
    if (!known)
      drafts.push({ draft: { kind: 'yard-opened', day: opened, yard, name }, lines: [], rank: RANK.yard });
    // A yard on record opens no earlier than it did: a box is not there before its yard.
    const earliestStart = known && firstDay(known.opened);
    for (const box of group) drafts.push(startBox(box, yard, earliestStart, known?.opened));
  }
  return drafts;
}

function startBox(
  box: PlannedBox,
  yard: YardId,
  yardFrom: PlainDay | undefined,
  yardDay: RoughDay | undefined,
): PlannedDraft {
  const tooEarly =
    yardFrom !== undefined &&
    firstDay(box.from) < yardFrom &&
    box.rows.every((row) => row.date === undefined);
  const day = tooEarly && yardDay ? yardDay : box.from;
  return {
    draft: { kind: 'colony-started', day, colony: box.id, yard, label: box.label, how: 'already-here' },
    lines: box.rows.map(({ line }) => line),
    rank: RANK.colony,
  };
}

function yardAnswer({ registry, ask }: CastContext): string {
  const yards = [...registry.yards.values()].map(({ name }) => name);
  const text = 'At which yard do the boxes of this table stand?';
  const answer =
    yards.length > 0
      ? ask({
          id: 'yard',
          text,
          options: yards.map((name) => ({ value: name, words: name })),
          guess: yards[0] ?? '',
        })
      : ask({ id: 'yard', text, options: [], free: 'text', guess: 'My yard' });
  return answer ?? 'My yard';
}
