import {
  addDays,
  dayNumber,
  dayOfNumber,
  firstDay,
  type PlainDay,
  type RoughDay,
} from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import type { Queen, Registry } from '../../src/registry/state.ts';
import { dayText } from '../parts/days.ts';
import { QUEEN_LOSSES } from '../parts/words.ts';

/** Where a queen has been, in order: awaited, then at the head of one colony after another. */
export interface TenureRow {
  readonly colony: ColonyId;
  readonly awaited: boolean;
  /** Day numbers; `to` absent: still. */
  readonly from: number;
  readonly to?: number;
  readonly words: string;
}

export function tenureRows(registry: Registry, queen: Queen): readonly TenureRow[] {
  const rows: TenureRow[] = queen.tenures.map(({ colony, from, to, ended, endDeduced }) => ({
    colony,
    awaited: false,
    from: dayNumber(firstDay(from)),
    ...(to === undefined ? {} : { to: dayNumber(firstDay(to)) }),
    words: spanWords(from, to, ended && `${QUEEN_LOSSES[ended]}${endDeduced ? ', as deduced' : ''}`),
  }));
  const awaited = awaitedRow(registry, queen);
  return awaited ? [awaited, ...rows] : rows;
}

function spanWords(from: RoughDay, to: RoughDay | undefined, ended: string | undefined): string {
  if (to === undefined) return `since ${dayText(from)}`;
  return `${dayText(from)} to ${dayText(to)}${ended ? `: ${ended}` : ''}`;
}

/** From the event that made her to her first tenure, or until she came to nothing. */
function awaitedRow(registry: Registry, queen: Queen): TenureRow | undefined {
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  if (!making || making.how === 'brought-in') return undefined;
  const first = queen.tenures[0];
  const colony = first?.colony ?? queen.expectedIn ?? making.colony;
  const until = first?.from ?? (queen.state.is === 'failed' ? queen.state.day : undefined);
  if (!colony || (first && firstDay(first.from) <= firstDay(making.day))) return undefined;
  const failed = queen.state.is === 'failed' ? QUEEN_LOSSES[queen.state.cause] : undefined;
  return {
    colony,
    awaited: true,
    from: dayNumber(firstDay(making.day)),
    ...(until === undefined ? {} : { to: dayNumber(firstDay(until)) }),
    words: `awaited ${spanWords(making.day, until, failed)}`,
  };
}

/** First and last day of the axis under the rows: some air around what they show, never past `on`. */
export function axisDays(
  rows: readonly TenureRow[],
  on: PlainDay,
): { readonly from: number; readonly to: PlainDay } {
  const today = dayNumber(on);
  const from = Math.min(...rows.map((row) => row.from)) - 10;
  const to = Math.max(...rows.map((row) => row.to ?? today));
  return { from, to: to + 40 >= today ? on : addDays(dayOfNumber(to), 40) };
}
