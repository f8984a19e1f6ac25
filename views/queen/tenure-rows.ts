import {
  addDays,
  dayNumber,
  dayOfNumber,
  firstDay,
  type PlainDay,
  type RoughDay,
} from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import type { Queen, Registry } from '../../src/registry/state.ts';
import { QUEEN_LOSSES } from '../parts/words.ts';

/** Where a queen has been, in order: at the head of one colony after another, each with the time she was awaited. */
export interface TenureRow {
  readonly colony: ColonyId;
  /** Day numbers: from when she was awaited there, from when and until when she headed it; `to` absent: still. */
  readonly awaitedFrom?: number;
  /** Absent where she never came to head it. */
  readonly from?: number;
  readonly to?: number;
  readonly words: string;
}

export function tenureRows(registry: Registry, queen: Queen): readonly TenureRow[] {
  const rows: TenureRow[] = queen.tenures.map(({ colony, from, to, ended, endDeduced }) => ({
    colony,
    from: number(from),
    ...(to === undefined ? {} : { to: number(to) }),
    words: spanWords(from, to, ended && `${QUEEN_LOSSES[ended]}${endDeduced ? ', as deduced' : ''}`),
  }));
  const awaited = awaitedRow(registry, queen);
  const first = rows[0];
  if (!awaited) return rows;
  if (!first || first.colony !== awaited.colony) return [awaited, ...rows];
  const { awaitedFrom, words } = awaited;
  return [{ ...first, awaitedFrom, words: `${words}; ${first.words}` }, ...rows.slice(1)];
}

const number = (day: RoughDay) => dayNumber(firstDay(day));

function spanWords(from: RoughDay, to: RoughDay | undefined, ended: string | undefined): string {
  if (to === undefined) return `since ${dayText(from)}`;
  return `${dayText(from)} to ${dayText(to)}${ended ? `: ${ended}` : ''}`;
}

/** From the event that made her to her first tenure, or until she came to nothing. */
function awaitedRow(
  registry: Registry,
  queen: Queen,
): (TenureRow & { readonly awaitedFrom: number }) | undefined {
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  if (!making || making.how === 'brought-in') return undefined;
  const first = queen.tenures[0];
  const colony = first?.colony ?? queen.expectedIn ?? making.colony;
  if (!colony || (first && firstDay(first.from) <= firstDay(making.day))) return undefined;
  const failed = queen.state.is === 'failed' ? queen.state : undefined;
  const end = first?.from ?? failed?.day;
  return {
    colony,
    awaitedFrom: number(making.day),
    ...(end === undefined ? {} : { to: number(end) }),
    words: failed
      ? `awaited ${spanWords(making.day, failed.day, QUEEN_LOSSES[failed.cause])}`
      : `awaited from ${dayText(making.day)}`,
  };
}

/** First and last day of the axis under the rows: some air around what they show, never past `on`. */
export function axisDays(
  rows: readonly TenureRow[],
  on: PlainDay,
): { readonly from: number; readonly to: PlainDay } {
  const today = dayNumber(on);
  const from = Math.min(...rows.map((row) => row.awaitedFrom ?? row.from ?? today)) - 10;
  const to = Math.max(...rows.map((row) => row.to ?? today));
  return { from, to: to + 40 >= today ? on : addDays(dayOfNumber(to), 40) };
}
