import { firstDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { ColonyId } from '../../journal/ids.ts';
import { isAlive } from '../../registry/queries.ts';
import type { Colony, Registry } from '../../registry/state.ts';
import type { Cast, CastContext, PlannedQueen } from './cast.ts';
import { groupBy } from './group-by.ts';
import type { ReadRow } from './row.ts';
import { earliest, evidenceDays, outcomeDay } from './timeline.ts';
import { nameKey } from './values/name.ts';

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
  for (const group of groupBy(labelled, boxKey).values()) {
    const ordered = [...group].sort(
      (a, b) => compareDays(startOf(a, cast, entered), startOf(b, cast, entered)) || a.line - b.line,
    );
    let box: PlannedBox | undefined;
    let ended: PlainDay | undefined;
    for (const row of ordered) {
      const start = startOf(row, cast, entered) ?? (today as string as RoughDay);
      if (
        !box ||
        (ended !== undefined && firstDay(start) >= ended && cast.ofRow.get(row.line) !== box.heads.at(-1))
      ) {
        box = openBox(row, start, context, ended !== undefined);
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

/** One label at two yards is two boxes. */
function boxKey(row: ReadRow): string {
  return `${nameKey(row.colony ?? '')}|${nameKey(row.yard ?? '')}`;
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

function openBox(row: ReadRow, from: RoughDay, context: CastContext, again: boolean): PlannedBox {
  const label = row.colony ?? '';
  const known = again ? undefined : knownBox(context.registry, label, row.yard, from);
  return {
    id: known?.id ?? (context.newId() as ColonyId),
    ...(known ? { known } : {}),
    label,
    ...(row.yard ? { yard: row.yard } : {}),
    rows: [],
    heads: [],
    from,
  };
}

/** The colony on record with this label: one alive on the day before any other, one at the yard named before others. */
function knownBox(
  registry: Registry,
  label: string,
  yard: string | undefined,
  day: RoughDay,
): Colony | undefined {
  const key = nameKey(label);
  const named = [...registry.colonies.values()].filter(
    (colony) => nameKey(colony.label) === key || colony.labels.some((each) => nameKey(each.label) === key),
  );
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
