import { inferQueenCalendar } from '../../graph/calendar/infer.ts';
import { addDays, dayNumber, dayOfNumber, type PlainDay } from '../../src/journal/day.ts';
import type { SplitPart } from '../../src/journal/entries/increase.ts';
import type { Parentage } from '../../src/journal/entry-parts.ts';
import { partMaking } from '../../src/registry/calendar.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import type { DayWindow, Registry } from '../../src/registry/state.ts';
import { dayInYear } from '../parts/days.ts';

/** What a part now is and what will happen in it, and the windows that say so. */
export interface PartStory {
  readonly sentence: string;
  readonly windows: readonly {
    readonly label: string;
    readonly window: DayWindow;
    readonly likely: PlainDay;
  }[];
  /** Days on which the box should stay shut. */
  readonly shut?: DayWindow;
  /** True when the part cannot get a queen as it stands. */
  readonly hopeless: boolean;
}

const QUIET = { windows: [], hopeless: false } as const;

/** The story of one part, from what it has for a queen. Windows are never a lone date. */
export function partStory(registry: Registry, part: SplitPart, day: PlainDay): PartStory {
  if (part.queen.how === 'old-queen') return { ...QUIET, sentence: oldQueenSentence(registry, part) };
  const made = partMaking(registry, part, dayNumber(day));
  if (!made) return { ...QUIET, hopeless: true, sentence: NO_QUEEN };
  const { windows } = inferQueenCalendar({ making: made.making, observations: [], on: dayNumber(day) });
  const span = (name: keyof typeof windows) => {
    const window = windows[name];
    return (
      window && {
        window: { first: dayOfNumber(window.earliest), last: dayOfNumber(window.latest) },
        likely: dayOfNumber(window.likely),
      }
    );
  };
  const [capped, emerged, laying] = [span('capped'), span('emerged'), span('laying')];
  const shown = [
    { label: 'Cells capped', at: capped },
    { label: 'Virgin emerges', at: emerged },
    { label: 'Eggs of hers', at: laying },
  ].flatMap(({ label, at }) => (at && at.window.last >= day ? [{ label, ...at }] : []));
  const shut = emerged && laying && { first: addDays(emerged.window.first, -1), last: laying.window.first };
  const stays = shut && shut.first <= shut.last;
  const from = shut && shut.first > day ? `from ${dayInYear(shut.first, day)} ` : '';
  const leave = stays ? ` Leave it shut ${from}until eggs are due.` : '';
  const sentence = `${opening(registry, part)}${leave}`;
  return { sentence, windows: shown, hopeless: false, ...(stays ? { shut } : {}) };
}

const NO_QUEEN =
  'No queen, and no eggs or cells to make one from. Give it a frame of eggs, cells or a queen.';

function oldQueenSentence(registry: Registry, { queen, frames }: SplitPart): string {
  const record = queen.how === 'old-queen' && queen.queen ? registry.queens.get(queen.queen) : undefined;
  const brood = (frames?.openBrood ?? 0) + (frames?.emergingBrood ?? 0) + (frames?.eggs ?? 0);
  const withBrood = brood > 0 ? `, with ${brood === 1 ? 'a frame' : `${brood} frames`} of her brood` : '';
  return `Has the old queen${record ? `, ${queenTitle(record)}` : ''}${withBrood}. She lays on.`;
}

function opening(registry: Registry, { queen }: SplitPart): string {
  switch (queen.how) {
    case 'raises-own': {
      const daughter = `a daughter of ${damWords(registry, queen.parentage)}`;
      if (queen.from === 'open-cells') return `No queen. Its open cells hold ${daughter}.`;
      if (queen.from === 'capped-cells') return `No queen. Its capped cells hold ${daughter}.`;
      const from = queen.from === 'eggs' ? 'eggs or just hatched larvae' : 'young brood';
      return `No queen. Raises ${daughter} from ${from}.`;
    }
    case 'given-cells': {
      const age = queen.age === 'unknown' ? 'cells of unknown age' : `${queen.age} cells`;
      return `Given ${age}: a daughter of ${damWords(registry, queen.parentage)}.`;
    }
    case 'given-queen': {
      const record = registry.queens.get(queen.queen);
      return `Given ${record ? queenTitle(record) : 'a queen'}.`;
    }
    default:
      return '';
  }
}

/** Who the dam is, as surely as it is known. */
function damWords(registry: Registry, { dams }: Parentage): string {
  const names = dams.flatMap(({ queen }) => {
    const record = registry.queens.get(queen);
    return record ? [queenTitle(record)] : [];
  });
  return names.length === 0 ? 'a queen not known' : names.join(' or ');
}
