import { groupBy } from '../../../graph/grouping.ts';
import { yearOf } from '../../journal/day.ts';
import type { QueenId } from '../../journal/ids.ts';
import type { Queen, Registry } from '../../registry/state.ts';
import type { ReadRow } from './row.ts';
import { labelKey, type NamedQueen, nameKey } from './values/name.ts';

/** Finds queens on record that a row may mean. */

const byNameOf = new WeakMap<Registry, ReadonlyMap<string, readonly Queen[]>>();

function queensByName(registry: Registry): ReadonlyMap<string, readonly Queen[]> {
  const known = byNameOf.get(registry);
  if (known) return known;
  const named = [...registry.queens.values()].filter(({ name }) => name !== undefined);
  const byName = groupBy(named, ({ name }) => nameKey(name ?? ''));
  byNameOf.set(registry, byName);
  return byName;
}

/** Queens on record with this name whose year does not speak against it. */
export function knownQueens(
  registry: Registry,
  named: NamedQueen,
  year: number | undefined,
): readonly Queen[] {
  const same = queensByName(registry).get(nameKey(named.name)) ?? [];
  return same.filter(
    ({ born }) => year === undefined || !born || (yearOf(born.first) <= year && yearOf(born.last) >= year),
  );
}

/** A queen on record without a name, of the same dam, year and box: a table brought in again. */
export function knownUnnamed(
  taken: ReadonlySet<QueenId>,
  row: ReadRow,
  year: number | undefined,
  registry: Registry,
): Queen | undefined {
  const dams = row.dam?.is === 'named' ? row.dam.dams.map(({ name }) => nameKey(name)).sort() : [];
  return [...registry.queens.values()].find((queen) => {
    if (queen.name !== undefined || taken.has(queen.id)) return false;
    const damNames = (queen.parentage?.dams ?? []).map((dam) =>
      nameKey(registry.queens.get(dam.queen)?.name ?? ''),
    );
    const labels = queen.tenures.map((tenure) => labelKey(registry.colonies.get(tenure.colony)?.label ?? ''));
    const sameBox = row.colony === undefined ? labels.length === 0 : labels.includes(labelKey(row.colony));
    const born = queen.born && yearOf(queen.born.first);
    return sameBox && born === year && damNames.sort().join('|') === dams.join('|');
  });
}
