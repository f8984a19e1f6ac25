import { dayNumber, dayOfNumber, type PlainDay } from '../../src/journal/day.ts';
import { colonyRound, yearSettings } from '../../src/registry/rounds.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import type { Settings } from '../../src/store/settings.ts';

export interface Due {
  readonly from: PlainDay;
  readonly to: PlainDay;
  readonly overdue: boolean;
}

/** Far enough ahead to name the next count of the season. */
const HORIZON_DAYS = 200;

/** When the mites of a colony are to be counted next, by the keeper's season and interval; none out of season. */
export function nextCount(
  registry: Registry,
  colony: Colony,
  on: PlainDay,
  { yearSpans, washEveryDays }: Pick<Settings, 'yearSpans' | 'washEveryDays'>,
): Due | undefined {
  const { tasks } = colonyRound(registry, colony, {
    on,
    horizonDays: HORIZON_DAYS,
    year: yearSettings(yearSpans, washEveryDays, on),
  });
  const task = tasks.find(({ code }) => code === 'mite-count');
  if (!task) return undefined;
  return {
    from: dayOfNumber(task.from),
    to: dayOfNumber(task.to),
    overdue: task.to < dayNumber(on),
  };
}
