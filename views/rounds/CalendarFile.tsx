import { calendarEvents } from '../../graph/calendar/index.ts';
import { dayNumber } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { labelOn } from '../../src/registry/queries.ts';
import type { YardRound } from '../../src/registry/rounds.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { saveFile } from '../parts/save-file.ts';

/** The tasks of the next weeks as a calendar file; made again it updates what the calendar has. */
export function CalendarFile({ rounds }: { readonly rounds: readonly YardRound[] }) {
  const { registry, on } = useStore();
  const make = async () => {
    const { writeCalendarFile } = await import('../../src/exchange/calendar-file.ts');
    const tasks = rounds.flatMap(({ colonies }) => colonies.flatMap((colony) => colony.tasks));
    const nameOf = (id: string) => {
      const colony = registry.value.colonies.get(id as ColonyId);
      return colony ? labelOn(colony, on.value) : id;
    };
    const text = await writeCalendarFile(calendarEvents(tasks, { nameOf, on: dayNumber(on.value) }), {
      name: 'Bee rounds',
      now: new Date(),
    });
    saveFile(text, `rounds-${on.value}.ics`, 'text/calendar');
  };
  return <Button onPress={make}>Calendar file</Button>;
}
