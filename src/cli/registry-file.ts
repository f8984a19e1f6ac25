import { readJournalFile } from '../exchange/journal-file/index.ts';
import { lastDay, PlainDay } from '../journal/day.ts';
import { problemText } from '../journal/problems.ts';
import { project } from '../registry/project.ts';
import type { Queen, Registry } from '../registry/state.ts';
import type { Arguments, World } from './command.ts';

/** A journal file read from disk, as the commands want it. */
export interface RegistryFile {
  readonly registry: Registry;
  /** The day asked for, or the last day that any entry speaks of: a command has no clock of its own. */
  readonly on: PlainDay;
}

export type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly string[] };

export const ON_OPTION = {
  name: 'on',
  value: 'DATE',
  help: 'Day to speak of, such as 2026-04-15; by default the last day that an entry of the file speaks of.',
} as const;

/** Reads a journal file and projects it up to the day of `--on`; without one, all of it, to speak of its last day. */
export function readRegistryFile(world: World, given: Arguments): Read<RegistryFile> {
  const path = given.positions[0] ?? '';
  let text: string;
  try {
    text = world.readText(path);
  } catch (error) {
    return {
      ok: false,
      problems: [`${path} cannot be read: ${error instanceof Error ? error.message : error}.`],
    };
  }
  const file = readJournalFile(text, path);
  if (!file.ok) return { ok: false, problems: file.problems.map(problemText) };
  const asked = given.options.get('on');
  const on = asked === undefined ? undefined : PlainDay.safeParse(asked);
  if (on && !on.success) {
    return { ok: false, problems: [`--on: '${asked}' is no day of the calendar. Write it as 2026-04-15.`] };
  }
  const journal = new Map(file.value.entries.map((entry) => [entry.id, entry]));
  const whole = project(journal);
  const last = whole.entries.reduce<PlainDay>((latest, { day }) => {
    const end = lastDay(day);
    return end > latest && day.length === 10 ? end : latest;
  }, '1900-01-01' as PlainDay);
  const day = on?.data ?? last;
  return { ok: true, value: { registry: on ? project(journal, { until: day }) : whole, on: day } };
}

/** The queens that a word on the command line may mean: an id, or a name (upper and lower case alike). */
export function queensCalled(registry: Registry, word: string): readonly Queen[] {
  const wanted = word.trim().toLocaleLowerCase('en');
  return [...registry.queens.values()].filter(
    ({ id, name }) => id === word || name?.toLocaleLowerCase('en') === wanted,
  );
}
