import { type Entry, type EntryKind, kindTitle } from '../journal/entry.ts';
import type { ColonyId, QueenId } from '../journal/ids.ts';
import { queenTitle } from '../registry/queries.ts';
import type { Registry } from '../registry/state.ts';

/** Kinds that say best what an action was; entries that only accompany them come last. */
const ACCOMPANYING: ReadonlySet<EntryKind> = new Set([
  'colony-started',
  'yard-opened',
  'queen-entered',
  'note',
]);

/** Words for an action written on another device, from what its entries say: "Inspection: Hive 3". */
export function actionTitle(entries: readonly Entry[], registry: Registry): string {
  const main = entries.find(({ kind }) => !ACCOMPANYING.has(kind)) ?? entries[0];
  if (!main) return 'Nothing';
  const subject = subjectOf(main, registry);
  return subject ? `${kindTitle(main.kind)}: ${subject}` : kindTitle(main.kind);
}

function subjectOf(entry: Entry, registry: Registry): string | undefined {
  const colony = field(entry, ['colony', 'source', 'to', 'builder']) as ColonyId | undefined;
  const label = colony && registry.colonies.get(colony)?.label;
  if (label) return label;
  const queen = field(entry, ['queen']) as QueenId | undefined;
  const record = queen && registry.queens.get(queen);
  return record && queenTitle(record);
}

function field(entry: Entry, names: readonly string[]): string | undefined {
  const values = entry as unknown as Record<string, unknown>;
  const name = names.find((each) => typeof values[each] === 'string');
  return name === undefined ? undefined : (values[name] as string);
}
