import { firstDay, lastDay, type PlainDay, type RoughDay } from '../journal/day.ts';
import type { PossibleDam } from '../journal/entry-parts.ts';
import type { KeeperId, QueenId, YardId } from '../journal/ids.ts';
import type { Colony, Queen, Registry, Stay, Tenure } from './state.ts';
import { wintersHeaded } from './winters-of-queen.ts';

/** True when the colony had begun and not ended on this day. */
export function isAlive(colony: Colony, on: PlainDay): boolean {
  if (firstDay(colony.started) > on) return false;
  return colony.ended === undefined || lastDay(colony.ended.day) >= on;
}

/**
 * True when the colony had begun and not ended by the end of this day, as the screens show it. An end known to the
 * month or year counts from its first day on.
 */
export function isLiving(colony: Colony, on: PlainDay): boolean {
  if (firstDay(colony.started) > on) return false;
  return colony.ended === undefined || firstDay(colony.ended.day) > on;
}

/** Where the colony stood on a day: the last stay begun by then. */
export function stayOn(colony: Colony, on: PlainDay): Stay | undefined {
  return colony.stays.findLast((stay) => firstDay(stay.from) <= on) ?? colony.stays[0];
}

/** The yard where the colony stood on that day. */
export function yardOn(colony: Colony, on: PlainDay): YardId | undefined {
  return stayOn(colony, on)?.yard;
}

/** The label that stood on the box on a day. */
export function labelOn(colony: Colony, on: PlainDay): string {
  return colony.labels.findLast(({ from }) => firstDay(from) <= on)?.label ?? colony.label;
}

/** An end known to the month or year counts from its first day on, as it does for colonies. */
function covers(tenure: Tenure, on: PlainDay): boolean {
  return firstDay(tenure.from) <= on && (tenure.to === undefined || firstDay(tenure.to) > on);
}

/** The tenure in force at the end of a day; absent when nobody known heads the colony. */
export function tenureOn(colony: Colony, on: PlainDay): Tenure | undefined {
  return colony.tenures.findLast((tenure) => covers(tenure, on));
}

/** Who headed the colony on that day, as far as is known. */
export function headOn(registry: Registry, colony: Colony, on: PlainDay): Queen | undefined {
  const tenure = tenureOn(colony, on);
  return tenure && registry.queens.get(tenure.queen);
}

/** The colony that a queen headed on a day. */
export function colonyOfQueen(registry: Registry, queen: Queen, on: PlainDay): Colony | undefined {
  const tenure = queen.tenures.findLast((each) => covers(each, on));
  return tenure && registry.colonies.get(tenure.colony);
}

/** Colonies living at a yard at the end of a day, by label. */
export function coloniesAt(registry: Registry, yard: YardId, on: PlainDay): readonly Colony[] {
  return [...registry.colonies.values()]
    .filter((colony) => isLiving(colony, on) && yardOn(colony, on) === yard)
    .sort(byLabel);
}

/** The yards that a keeper works: where any entry about a colony was recorded by them, or which they opened. */
export function yardsOf(registry: Registry, keeper: KeeperId): ReadonlySet<YardId> {
  const yards = new Set<YardId>();
  for (const entry of registry.entries) {
    if (entry.recordedBy !== keeper) continue;
    if (entry.kind === 'yard-opened') yards.add(entry.yard);
    if (!('colony' in entry) || !entry.colony) continue;
    const colony = registry.colonies.get(entry.colony);
    const yard = colony && yardOn(colony, lastDay(entry.day));
    if (yard) yards.add(yard);
  }
  return yards;
}

/** Order by label, numbers inside labels by size; ties by id. */
export function byLabel(a: Colony, b: Colony): number {
  return a.label.localeCompare(b.label, 'en', { numeric: true }) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}

/** Living laying queens who head a colony on a day. */
export function layingQueens(registry: Registry, on: PlainDay): readonly Queen[] {
  const heads: Queen[] = [];
  for (const colony of registry.colonies.values()) {
    if (!isLiving(colony, on)) continue;
    const head = headOn(registry, colony, on);
    if (head && head.state.is === 'laying') heads.push(head);
  }
  return heads.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Who may head a colony, as Yards shows it. */
export type HeadState =
  /** A laying queen who headed a colony through a winter. */
  | 'proven'
  | 'laying'
  /** Nobody lays yet: cells, eggs left to raise from, or a virgin. */
  | 'expected'
  /** No queen known and none expected. */
  | 'nobody-known';

/** How the colony is headed: a queen is proven once she has come through a winter at its head. */
export function headState(registry: Registry, colony: Colony, on: PlainDay): HeadState {
  const head = headOn(registry, colony, on);
  if (head) return wintersHeaded(head, on) > 0 ? 'proven' : 'laying';
  return colony.expected.length > 0 ? 'expected' : 'nobody-known';
}

/** The most likely dam, if any is named. */
export function likelyDam(queen: Queen): PossibleDam | undefined {
  return queen.parentage?.dams.reduce<PossibleDam | undefined>(
    (best, dam) => (best === undefined || dam.probability > best.probability ? dam : best),
    undefined,
  );
}

/** How sure the dam is: firm (probability 1, and no other brood hung there), probable, or unknown. */
export function damCertainty(queen: Queen): 'firm' | 'probable' | 'unknown' {
  const dam = likelyDam(queen);
  if (!dam) return 'unknown';
  return dam.probability >= 1 && queen.orDaughterOf === undefined ? 'firm' : 'probable';
}

/** Words that tell an unnamed queen from others without borrowing a name: her year and how she stands. */
export function queenTitle(queen: Queen): string {
  if (queen.name) return queen.name;
  const year = queen.born?.first.slice(0, 4);
  const kind = queen.state.is === 'expected' ? 'expected queen' : 'unnamed queen';
  return year ? `${kind} of ${year}` : kind;
}

/** The later of two rough days, by the first day each may mean. */
export function later(a: RoughDay, b: RoughDay): RoughDay {
  return firstDay(a) >= firstDay(b) ? a : b;
}

/** Throws where no record tells of her: ids come from the registry itself. */
export function queenById(registry: Registry, id: QueenId): Queen {
  const queen = registry.queens.get(id);
  if (!queen) throw new Error(`No queen ${id} in the registry.`);
  return queen;
}
