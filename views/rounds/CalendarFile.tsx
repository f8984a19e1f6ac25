import { calendarEvents } from '../../graph/calendar/index.ts';
import { nextCalendar } from '../../src/exchange/calendar-record.ts';
import { dayNumber } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { labelOn } from '../../src/registry/queries.ts';
import type { YardRound } from '../../src/registry/rounds.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { saveFile } from '../parts/save-file.ts';
import { useToday } from '../parts/use-today.ts';

/**
 * The tasks of the next weeks as a calendar file. Made again it updates what the calendar has, and takes out what an
 * earlier one brought and is no longer due.
 */
export function CalendarFile({ rounds }: { readonly rounds: readonly YardRound[] }) {
  const store = useStore();
  const today = useToday();
  const make = async () => {
    const { writeCalendarFile } = await import('../../src/exchange/calendar-file.ts');
    const { registry, on, settings } = store;
    const tasks = rounds.flatMap(({ colonies }) => colonies.flatMap((colony) => colony.tasks));
    const nameOf = (id: string) => {
      const colony = registry.value.colonies.get(id as ColonyId);
      return colony ? labelOn(colony, on.value) : id;
    };
    const now = new Date();
    const writing = { now, on: dayNumber(on.value), today: dayNumber(today) };
    const events = calendarEvents(tasks, { nameOf, on: writing.on });
    const { sequence, cancelled, record } = nextCalendar(settings.value.calendar, events, writing);
    const text = await writeCalendarFile(events, { name: 'Bee rounds', now, sequence, cancelled });
    saveFile(text, `rounds-${on.value}.ics`, 'text/calendar');
    await store.changeSettings({ calendar: record });
  };
  return <Button onPress={make}>Calendar file</Button>;
}
