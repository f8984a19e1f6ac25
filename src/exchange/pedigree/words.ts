import type { PlainDay, RoughDay } from '../../journal/day.ts';
import { isExactDay } from '../../journal/day.ts';
import { dayText, winterYears } from '../../journal/day-words.ts';
import type { Entry, EntryOf } from '../../journal/entry.ts';
import { matingOf } from '../../registry/pools.ts';
import { queenTitle } from '../../registry/queries.ts';
import type { DayWindow, MakingHow, Queen, Registry } from '../../registry/state.ts';
import { wintersCrossed } from '../../registry/winters-of-queen.ts';

/** Sentences about queens and records, for pages and files that are read without the app. */

/** The shortest rough day that takes in a whole window; nothing when it spans years. */
export function roughDayOf(window: DayWindow): RoughDay | undefined {
  for (const length of [10, 7, 4]) {
    const start = window.first.slice(0, length);
    if (window.last.slice(0, length) === start) return start as RoughDay;
  }
  return undefined;
}

/** "on 14 May 2024", "in May 2024". */
function dayWords(day: RoughDay): string {
  return `${isExactDay(day) ? 'on' : 'in'} ${dayText(day)}`;
}

/** "on 14 May 2024", "in 2024", or the two days it lies between. */
export function windowWords(window: DayWindow): string {
  const rough = roughDayOf(window);
  if (rough && (isExactDay(rough) || rough.length === 4)) return dayWords(rough);
  return `between ${dayText(window.first)} and ${dayText(window.last)}`;
}

const MADE: Record<MakingHow, string | undefined> = {
  split: 'Made by a split',
  cells: 'Made from cells carried over',
  eggs: 'Raised from a frame of eggs',
  graft: 'Grafted',
  swarm: 'Raised in a swarm preparation',
  supersedure: 'Raised in a supersedure',
  emergency: 'Raised from emergency cells',
  'brought-in': undefined,
};

/** How she came about, as a sentence; nothing for one who was brought in. */
export function makingWords(registry: Registry, queen: Queen): string | undefined {
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  const how = making && MADE[making.how];
  return how && `${how} ${dayWords(making.day)}.`;
}

type Ended = Extract<Queen['state'], { is: 'gone' | 'failed' }>;

const FATES: Readonly<Record<Ended['cause'], string>> = {
  superseded: 'Superseded',
  swarmed: 'Left with a swarm',
  'failed-to-emerge': 'Did not emerge',
  'failed-to-mate': 'Did not mate',
  'drone-layer': 'Laid drones only',
  killed: 'Killed',
  'given-away': 'Given away',
  'died-with-colony': 'Died with her colony',
  'not-found': 'Not found any more',
  unknown: 'Lost',
  'another-came-first': 'Another queen came first',
};

/** What became of her: "Superseded in May 2024." To whom a queen was given is another's affair and is not told. */
export function fateWords({ state }: Queen): string | undefined {
  if (state.is !== 'gone' && state.is !== 'failed') return undefined;
  return `${FATES[state.cause]} ${dayWords(state.day)}.`;
}

/** "Crossed the winters 2022/23 and 2023/24."; nothing where none is on record. */
export function winterSentence(queen: Queen, on: PlainDay): string | undefined {
  const winters = wintersCrossed(queen, on).map(winterYears);
  if (winters.length === 0) return undefined;
  const last = winters.at(-1);
  if (winters.length === 1) return `Crossed the winter ${last}.`;
  return `Crossed the winters ${winters.slice(0, -1).join(', ')} and ${last}.`;
}

/** The winters that another keeper told of with her pedigree, as he wrote them: "2022/23 and 2023/24". */
export function wintersTold({ entries }: Queen): string | undefined {
  for (const entry of entries) {
    if (entry.kind !== 'queen-entered' || entry.colony !== undefined) continue;
    const told = /\bCrossed the winters? ([^.]+)\./.exec(entry.remark ?? '')?.[1];
    if (told) return told;
  }
  return undefined;
}

/** How she mated. Yards are named only where they may be told. */
export function matingWords(registry: Registry, queen: Queen, hideYards: boolean): string | undefined {
  const mating = matingOf(registry, queen);
  if (mating.kind === 'unrecorded') return undefined;
  if (mating.kind === 'pool') {
    const yard = hideYards ? undefined : registry.yards.get(mating.yard)?.name;
    return `Mated in the open${yard ? ` at ${yard}` : ''}, ${mating.season}.`;
  }
  const { way } = mating.entry;
  if (way.manner === 'open') return undefined;
  const mothers = way.droneMothers.map(({ queen: id, share }) => {
    const mother = registry.queens.get(id);
    return `${mother ? queenTitle(mother) : 'a queen without records'} ${Math.round(share * 100)} %`;
  });
  const place = way.manner === 'station' && !hideYards ? ` at the station ${way.station}` : '';
  const manner = way.manner === 'station' ? `Mated${place || ' at a station'}` : 'Inseminated';
  return `${manner}, drones of ${mothers.length > 0 ? mothers.join(', ') : 'unnamed queens'}.`;
}

/** One record of a trait in words: "gentle 3.5, calm 4, 7 frames of bees"; nothing for entries that are none. */
export function recordWords(entry: Entry): string | undefined {
  switch (entry.kind) {
    case 'inspection':
      return inspectionWords(entry);
    case 'mite-count':
      return miteWords(entry);
    case 'winter-outcome':
      return winterWords(entry);
    case 'hygienic-test':
      return `${entry.method} test: ${entry.notCleared} of ${entry.cells} cells not cleared after ${entry.hours} h`;
    case 'harvest':
      return `${entry.kilograms} kg of honey`;
    default:
      return undefined;
  }
}

function inspectionWords(entry: EntryOf<'inspection'>): string | undefined {
  const parts = [
    said('gentle', entry.gentle),
    said('calm', entry.calm),
    said('swarm tendency', entry.swarmTendency),
    counted(entry.framesOfBees, 'frame', 'of bees'),
    counted(entry.framesOfBrood, 'frame', 'of brood'),
    entry.broodPattern === undefined ? undefined : `brood pattern ${entry.broodPattern} %`,
  ].filter((part) => part !== undefined);
  return parts.length > 0 ? parts.join(', ') : undefined;
}

function said(name: string, value: number | undefined): string | undefined {
  return value === undefined ? undefined : `${name} ${value}`;
}

function counted(value: number | undefined, name: string, of: string): string | undefined {
  return value === undefined ? undefined : `${value} ${plural(value, name)} ${of}`;
}

function plural(value: number, name: string): string {
  return value === 1 ? name : `${name}s`;
}

function miteWords({ sample }: EntryOf<'mite-count'>): string {
  const mites = `${sample.mites} ${plural(sample.mites, 'mite')}`;
  if (sample.method === 'natural-drop')
    return `natural drop of ${mites} in ${sample.days} ${plural(sample.days, 'day')}`;
  const method = sample.method === 'wash' ? 'wash' : 'sugar shake';
  return `${method}: ${mites} on ${sample.bees} bees`;
}

function winterWords(entry: EntryOf<'winter-outcome'>): string {
  const winter = `winter ${winterYears(entry.winter)}`;
  if (!entry.alive) return `${winter}: lost${entry.cause ? ` (${entry.cause.replaceAll('-', ' ')})` : ''}`;
  const { autumnFramesOfBees: autumn, springFramesOfBees: spring } = entry;
  const strength =
    autumn === undefined || spring === undefined
      ? ''
      : `, ${autumn} ${plural(autumn, 'frame')} of bees before and ${spring} after`;
  return `${winter}: alive${strength}`;
}
