import { groupBy } from '../../../graph/grouping.ts';
import { firstDay, lastDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { ColonyId } from '../../journal/ids.ts';
import { colonyOfQueen, isAlive } from '../../registry/queries.ts';
import type { Colony, Registry } from '../../registry/state.ts';
import type { Cast, CastContext, PlannedQueen } from './cast.ts';
import type { ReadRow } from './row.ts';
import { earliest, evidenceDays, outcomeDay } from './timeline.ts';
import { labelKey, nameKey } from './values/name.ts';

/** A colony of the table: on record already, or to be started. A label may stand on one after the other. */
export interface PlannedBox {
  readonly id: ColonyId;
  readonly known?: Colony;
  readonly label: string;
  readonly yard?: string;
  /** The rows that speak of it. */
  readonly rows: ReadRow[];
  /** Queens to be put into it, in order. */
  readonly heads: PlannedQueen[];
  from: RoughDay;
}

export interface Boxes {
  readonly all: readonly PlannedBox[];
  readonly ofRow: ReadonlyMap<number, PlannedBox>;
  /** The boxes that each queen is put into, in order. */
  readonly ofQueen: ReadonlyMap<PlannedQueen, readonly PlannedBox[]>;
}

/** Finds the colony of each row by its label, and tells those apart that bore one label one after the other. */
export function castBoxes(
  rows: readonly ReadRow[],
  cast: Cast,
  entered: ReadonlyMap<PlannedQueen, RoughDay>,
  context: CastContext,
  today: PlainDay,
): Boxes {
  const all: PlannedBox[] = [];
  const ofRow = new Map<number, PlannedBox>();
  const labelled = rows.filter((row) => row.colony !== undefined);
  const yards = yardsByLabel(labelled);
  const headed = (row: ReadRow) => headedBox(row, cast, context.registry, today);
  const keyOf = (row: ReadRow) => headed(row)?.id ?? boxKey(row, yards);
  for (const group of groupBy(labelled, keyOf).values()) {
    const yard = group.find((row) => row.yard !== undefined)?.yard;
    const label = usualLabel(group);
    const ordered = [...group].sort(
      (a, b) => compareDays(startOf(a, cast, entered), startOf(b, cast, entered)) || a.line - b.line,
    );
    let box: PlannedBox | undefined;
    let ended: PlainDay | undefined;
    for (const row of ordered) {
      const start = startOf(row, cast, entered) ?? (today as string as RoughDay);
      const another =
        ended !== undefined && firstDay(start) >= ended && cast.ofRow.get(row.line) !== box?.heads.at(-1);
      const gone = box?.known?.ended && lastDay(box.known.ended.day) < firstDay(start);
      if (!box || another || gone) {
        const known = another ? undefined : (headed(row) ?? knownBox(context.registry, row, yard, start));
        box = openBox(label, yard, start, context, known);
        all.push(box);
        ended = undefined;
      }
      takeRow(box, row, start, cast);
      ofRow.set(row.line, box);
      ended = endOf(row, today) ?? ended;
    }
  }
  return { all, ofRow, ofQueen: boxesByQueen(all) };
}

function boxesByQueen(boxes: readonly PlannedBox[]): ReadonlyMap<PlannedQueen, readonly PlannedBox[]> {
  const pairs = boxes.flatMap((box) => box.heads.map((queen) => ({ queen, box })));
  return new Map(
    [...groupBy(pairs, ({ queen }) => queen)].map(([queen, list]) => [queen, list.map(({ box }) => box)]),
  );
}

/** One label at two yards is two boxes. A row that names no yard means the only one at which its label stands. */
function boxKey(row: ReadRow, yards: ReadonlyMap<string, ReadonlySet<string>>): string {
  const label = labelKey(row.colony ?? '');
  const all = yards.get(label);
  const only = all?.size === 1 ? [...all][0] : undefined;
  return `${label}|${row.yard === undefined ? (only ?? '') : nameKey(row.yard)}`;
}

function yardsByLabel(rows: readonly ReadRow[]): ReadonlyMap<string, ReadonlySet<string>> {
  const named = rows.filter(({ yard }) => yard !== undefined);
  return new Map(
    [...groupBy(named, ({ colony }) => labelKey(colony ?? ''))].map(([label, group]) => [
      label,
      new Set(group.map(({ yard }) => nameKey(yard ?? ''))),
    ]),
  );
}

/** The colony on record that the queen of the row headed then, where it bore the label of the row. */
function headedBox(row: ReadRow, cast: Cast, registry: Registry, today: PlainDay): Colony | undefined {
  const queen = cast.ofRow.get(row.line)?.known;
  const colony = queen && colonyOfQueen(registry, queen, row.date ? firstDay(row.date) : today);
  return colony && bears(colony, labelKey(row.colony ?? '')) ? colony : undefined;
}

function bears(colony: Colony, key: string): boolean {
  return labelKey(colony.label) === key || colony.labels.some(({ label }) => labelKey(label) === key);
}

function compareDays(a: RoughDay | undefined, b: RoughDay | undefined): number {
  if (!a || !b) return a ? -1 : b ? 1 : 0;
  return firstDay(a) < firstDay(b) ? -1 : firstDay(a) > firstDay(b) ? 1 : 0;
}

/** From when the row speaks of its box. */
function startOf(
  row: ReadRow,
  cast: Cast,
  entered: ReadonlyMap<PlannedQueen, RoughDay>,
): RoughDay | undefined {
  const queen = cast.ofRow.get(row.line);
  const head = queen && !queen.known && queen.rows[0] === row ? entered.get(queen) : undefined;
  return earliest([...evidenceDays(row), ...(head ? [head] : [])]);
}

/** Of the ways in which a label is written, the one that most rows use; of those, the shortest. */
function usualLabel(rows: readonly ReadRow[]): string {
  const ways = [...groupBy(rows, ({ colony }) => colony ?? '')];
  ways.sort((a, b) => b[1].length - a[1].length || a[0].length - b[0].length);
  return ways[0]?.[0] ?? '';
}

function openBox(
  label: string,
  yard: string | undefined,
  from: RoughDay,
  context: CastContext,
  known: Colony | undefined,
): PlannedBox {
  return {
    id: known?.id ?? (context.newId() as ColonyId),
    ...(known ? { known } : {}),
    label,
    ...(yard ? { yard } : {}),
    rows: [],
    heads: [],
    from,
  };
}

/** The colony on record with this label: one alive on the day before any other, one at the yard named before others. */
function knownBox(
  registry: Registry,
  row: ReadRow,
  yard: string | undefined,
  day: RoughDay,
): Colony | undefined {
  const key = labelKey(row.colony ?? '');
  const named = [...registry.colonies.values()].filter((colony) => bears(colony, key));
  const at = named.filter((colony) => {
    const name = registry.yards.get(colony.stays.at(-1)?.yard ?? ('' as never))?.name;
    return yard === undefined || (name !== undefined && nameKey(name) === nameKey(yard));
  });
  return at.find((colony) => isAlive(colony, firstDay(day))) ?? at.find((colony) => !colony.ended);
}

function takeRow(box: PlannedBox, row: ReadRow, start: RoughDay, cast: Cast): void {
  box.rows.push(row);
  if (firstDay(start) < firstDay(box.from)) box.from = start;
  const queen = cast.ofRow.get(row.line);
  if (queen && !box.heads.includes(queen)) box.heads.push(queen);
}

/** The day by which the row says that the colony was no more. */
function endOf(row: ReadRow, today: PlainDay): PlainDay | undefined {
  const dead = row.winters.find(({ outcome }) => outcome.is === 'dead');
  if (dead) return firstDay(outcomeDay(row, dead.winter, today));
  return row.outcome?.is === 'dead' && row.ended ? firstDay(row.ended) : undefined;
}
