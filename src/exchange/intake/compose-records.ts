import { groupBy } from '../../../graph/grouping.ts';
import type { RoughDay } from '../../journal/day.ts';
import type { Draft } from '../../journal/entry.ts';
import { type PlannedDraft, RANK, type Scene } from './compose.ts';
import type { ReadRow } from './row.ts';
import { outcomeDay } from './timeline.ts';

/** The drafts of what the rows say was seen, counted, harvested and lost, and of their notes. */
export function composeRecords(scene: Scene): readonly PlannedDraft[] {
  return scene.rows.flatMap((row) => [
    ...recordsOfRow(scene, row),
    ...lossOfRow(scene, row),
    ...noteOfRow(scene, row),
  ]);
}

function recordsOfRow({ boxes, today }: Scene, row: ReadRow): readonly PlannedDraft[] {
  const colony = boxes.ofRow.get(row.line)?.id;
  if (!colony) return [];
  const planned = (draft: Draft, rank: number): PlannedDraft => ({ draft, lines: [row.line], rank });
  const inspections = [...groupBy(row.inspections, ({ day }) => day)].map(([day, values]) => {
    const seen = Object.fromEntries(values.map(({ field, value }) => [field, value]));
    return planned({ kind: 'inspection', day, colony, ...seen }, RANK.record);
  });
  const winters = row.winters.map(({ winter, outcome }) => {
    const alive = outcome.is !== 'dead';
    const cause = outcome.is === 'dead' && outcome.cause ? { cause: outcome.cause } : {};
    const day = outcomeDay(row, winter, today);
    return planned({ kind: 'winter-outcome', day, colony, winter, alive, ...cause }, RANK.winter);
  });
  const mites = row.mites.map(({ day, sample }) =>
    planned({ kind: 'mite-count', day, colony, sample }, RANK.record),
  );
  const harvests = row.harvests.map(({ day, kilograms }) =>
    planned({ kind: 'harvest', day, colony, kilograms }, RANK.record),
  );
  return [...winters, ...inspections, ...mites, ...harvests];
}

function lossOfRow({ boxes, cast }: Scene, row: ReadRow): readonly PlannedDraft[] {
  const { outcome, ended } = row;
  if (!outcome || !ended) return [];
  const colony = boxes.ofRow.get(row.line)?.id;
  const queen = cast.ofRow.get(row.line);
  const died = row.winters.some((winter) => winter.outcome.is === 'dead');
  if (outcome.is === 'dead' && colony && !died) {
    const draft: Draft = { kind: 'colony-ended', day: ended, colony, cause: outcome.cause ?? 'unknown' };
    return [{ draft, lines: [row.line], rank: RANK.loss }];
  }
  const lostQueen = outcome.is === 'queen-lost' || (outcome.is === 'dead' && !colony);
  if (!lostQueen || !queen) return [];
  const cause = outcome.is === 'queen-lost' ? outcome.cause : 'died-with-colony';
  const to = outcome.is === 'queen-lost' && outcome.to ? { to: outcome.to } : {};
  const draft: Draft = { kind: 'queen-lost', day: ended, queen: queen.id, cause, ...to };
  return [{ draft, lines: [row.line], rank: RANK.loss }];
}

function noteOfRow({ boxes, cast, today }: Scene, row: ReadRow): readonly PlannedDraft[] {
  const text = row.notes.join('\n').trim();
  const queen = cast.ofRow.get(row.line);
  const colony = boxes.ofRow.get(row.line);
  if (text === '' || (!queen && !colony)) return [];
  const about: Draft<'note'>['about'] = queen
    ? { of: 'queen', queen: queen.id }
    : colony && { of: 'colony', colony: colony.id };
  const day = row.date ?? (today as string as RoughDay);
  return [
    { draft: { kind: 'note', day, text, ...(about ? { about } : {}) }, lines: [row.line], rank: RANK.note },
  ];
}
