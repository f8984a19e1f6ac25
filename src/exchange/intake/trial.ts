import type { PlainDay } from '../../journal/day.ts';
import type { Draft } from '../../journal/entry.ts';
import type { KeeperId } from '../../journal/ids.ts';
import { canonicalText } from '../../journal/journal.ts';
import { type Scribe, writeEntries } from '../../journal/write.ts';
import { contradictionsOf, type Projection } from '../../registry/project.ts';
import type { Contradiction } from '../../registry/state.ts';
import type { PlannedDraft } from './compose.ts';
import type { ReadRow, RowProblem } from './row.ts';

/** Drafts tried against the records before anything is written. */

/** Tries the drafts against the records. Rows that contradict are blocked; true when there were any. */
export function blockContradictory(
  rows: readonly ReadRow[],
  drafts: readonly PlannedDraft[],
  projection: Projection,
  { newId, today }: { readonly newId: () => string; readonly today: PlainDay },
  blocked: Map<number, RowProblem[]>,
): boolean {
  const before = blocked.size;
  for (const row of rows) {
    const problems = row.problems.filter(({ blocks }) => blocks);
    if (problems.length > 0) blocked.set(row.line, problems);
  }
  // Tried as they will be written: after all that is on record, which of two entries of one day comes first.
  const scribe = { keeper: newId() as KeeperId, now: () => new Date(`${today}T23:59:59.999Z`), newId };
  const written = writeEntries(
    drafts.map(({ draft }) => draft),
    scribe,
  );
  if (!written.ok) {
    for (const planned of drafts) blockInvalid(planned, scribe, blocked);
    return blocked.size > before;
  }
  const byEntry = new Map(written.value.map((entry, index) => [entry.id, drafts[index]]));
  for (const contradiction of contradictionsOf(projection, written.value)) {
    if (contradiction.overruled !== undefined) continue;
    const planned = byEntry.get(contradiction.entry);
    const lines = planned && planned.lines.length > 0 ? planned.lines : linesAbout(contradiction, drafts);
    for (const line of lines) add(blocked, line, contradictionProblem(line, contradiction));
  }
  return blocked.size > before;
}

function blockInvalid(planned: PlannedDraft, scribe: Scribe, blocked: Map<number, RowProblem[]>): void {
  const alone = writeEntries([planned.draft], scribe);
  if (alone.ok) return;
  for (const line of planned.lines) {
    for (const problem of alone.problems)
      add(blocked, line, { ...problem, where: `Row ${line}`, blocks: true });
  }
}

function linesAbout({ queen, colony }: Contradiction, drafts: readonly PlannedDraft[]): readonly number[] {
  const about = drafts.filter(({ draft }) => {
    const text = JSON.stringify(draft);
    return (queen !== undefined && text.includes(queen)) || (colony !== undefined && text.includes(colony));
  });
  return [...new Set(about.flatMap(({ lines }) => lines))];
}

function contradictionProblem(line: number, { code, found, because, remedies }: Contradiction): RowProblem {
  const remedy = remedies.length > 0 ? remedies.join(' Or: ') : 'Correct the row, or leave it out.';
  return { code, where: `Row ${line}`, found, because, remedy, blocks: true };
}

function add(blocked: Map<number, RowProblem[]>, line: number, problem: RowProblem): void {
  const known = blocked.get(line) ?? [];
  if (known.some(({ code, because }) => code === problem.code && because === problem.because)) return;
  blocked.set(line, [...known, problem]);
}

/** Contents of the records, to tell what a table says twice. Notes of a table bear the day they were brought in. */
export function contentsOf(projection: Projection): ReadonlySet<string> {
  return new Set(
    projection.registry.entries.map(({ id: _, action: __, recordedAt: ___, recordedBy: ____, ...content }) =>
      contentOf(content as Draft),
    ),
  );
}

export function contentOf(draft: Draft): string {
  return draft.kind === 'note' ? canonicalText({ ...draft, day: '' }) : canonicalText(draft);
}
