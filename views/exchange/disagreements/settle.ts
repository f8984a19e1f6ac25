import type { PlainDay } from '../../../src/journal/day.ts';
import type { Draft, Entry } from '../../../src/journal/entry.ts';
import type { Disagreement } from '../../../src/journal/journal.ts';

/** The versions of one entry that stand against one another, the one that counts now first. */
export function versionsOf({ counts, against }: Disagreement): readonly Entry[] {
  return [counts, ...[...against].reverse()];
}

/**
 * Settles a disagreement for a version: a correction that repeats it, and a withdrawal of the others. The correction
 * is new, so it is also seen where the journals meet again: a keeper who settles it otherwise disagrees anew, in sight.
 */
export function settlingDrafts(
  disagreement: Disagreement,
  chosen: Entry,
  today: PlainDay,
): readonly [Draft, Draft<'withdrawal'>] {
  const others = versionsOf(disagreement).filter(({ id }) => id !== chosen.id);
  return [
    { ...contentOf(chosen), supersedes: chosen.id },
    {
      kind: 'withdrawal',
      day: today as string as Draft['day'],
      withdraws: others.map(({ id }) => id),
      reason: 'another version was chosen',
    },
  ];
}

/** What an entry says, without when and by whom it was written. */
function contentOf(entry: Entry): Draft {
  const { id: _, action: __, recordedAt: ___, recordedBy: ____, supersedes: _____, ...content } = entry;
  return content;
}

/** Names of the fields in which versions differ, in the order in which they stand. */
export function differingFields(versions: readonly Entry[]): readonly string[] {
  const about = new Set(['id', 'action', 'recordedAt', 'recordedBy', 'supersedes', 'kind']);
  const names = [...new Set(versions.flatMap((version) => Object.keys(version)))];
  return names.filter((name) => {
    if (about.has(name)) return false;
    const texts = versions.map((version) =>
      JSON.stringify((version as unknown as Record<string, unknown>)[name]),
    );
    return new Set(texts).size > 1;
  });
}
