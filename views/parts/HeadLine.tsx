import { dayOfNumber, type PlainDay } from '../../src/journal/day.ts';
import { headOn } from '../../src/registry/queries.ts';
import { colonyCalendar } from '../../src/registry/rounds.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import { wintersHeaded } from '../../src/registry/winters-of-queen.ts';
import { expectedQueens, inVainText } from './awaited.ts';
import { windowText } from './days.ts';
import { QueenName } from './QueenName.tsx';
import { count, lowerFirst } from './words.ts';

/** Who heads a colony on a day: her name, or who is on the way, or nobody known. */
export function HeadLine({ colony, registry, on }: HeadProps) {
  const head = headOn(registry, colony, on);
  if (head) return <QueenName queen={head} />;
  const coming = expectedQueens(colony, registry);
  if (coming.length === 0 || inVainText(registry, colony, on)) return <>Nobody known</>;
  const first = coming[0];
  return <>{coming.length === 1 && first?.name ? <QueenName queen={first} /> : 'A queen expected'}</>;
}

export interface HeadProps {
  readonly colony: Colony;
  readonly registry: Registry;
  readonly on: PlainDay;
}

/** How she stands, in a few words: "proven, 2 winters", "virgin emerges between 13 and 20 May". */
export function headWords({ colony, registry, on }: HeadProps): string {
  const head = headOn(registry, colony, on);
  if (head) {
    const winters = wintersHeaded(head, on);
    return winters > 0 ? `proven, ${count(winters, 'winter')}` : 'laying, no winter on record';
  }
  const coming = expectedQueens(colony, registry);
  if (coming.length === 0) return 'no queen known, none expected';
  const inVain = inVainText(registry, colony, on);
  return inVain ? lowerFirst(inVain).replace(/\.$/, '') : expectedWords(registry, colony, on);
}

/** When the virgin is due, by the same calendar as the page of the colony. */
function expectedWords(registry: Registry, colony: Colony, on: PlainDay): string {
  const emerged = colonyCalendar(registry, colony, on)?.calendar.windows.emerged;
  if (!emerged) return 'cells, eggs or a virgin';
  const window = { first: dayOfNumber(emerged.earliest), last: dayOfNumber(emerged.latest) };
  return window.last < on
    ? 'virgin due to be out, eggs not seen yet'
    : `virgin emerges ${windowText(window, on)}`;
}
