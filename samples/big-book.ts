import { type Random, randomGenerator } from '../graph/numerics/random.ts';
import type { Draft, Entry } from '../src/journal/entry.ts';
import type { ColonyId, KeeperId, QueenId, YardId } from '../src/journal/ids.ts';

/** The book of the big invented registry: entries as they are written, with seeded ids that rise with time. */

export const FIRST_SEASON = 2015;

export interface Hive {
  readonly id: ColonyId;
  readonly yard: YardId;
  readonly label: string;
  head: QueenId | undefined;
  virgin: QueenId | undefined;
}

export interface Union {
  readonly entries: Entry[];
  readonly random: Random;
  readonly keeper: KeeperId;
  hives: Hive[];
  day: string;
  clock: number;
  labels: number;
}

export type Said<K extends Draft['kind']> = Omit<Extract<Draft, { kind: K }>, 'day'>;

export function found(seed: number): Union {
  const random = randomGenerator(seed);
  const union: Union = {
    entries: [],
    random,
    keeper: '' as KeeperId,
    hives: [],
    day: `${FIRST_SEASON}-03-01`,
    clock: Date.parse(`${FIRST_SEASON}-03-01T12:00:00Z`),
    labels: 0,
  };
  return { ...union, keeper: newId(union) as KeeperId };
}

export function on(union: Union, day: string): void {
  union.day = day;
  union.clock = Math.max(union.clock, Date.parse(`${day}T12:00:00Z`));
}

/** A UUIDv7 with a millisecond of its own, so that ids rise with time. */
export function newId(union: Union): string {
  union.clock += 1;
  const time = union.clock.toString(16).padStart(12, '0');
  const tail = union.random.bits().toString(16).padStart(8, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-0000${tail}`;
}

export function write(union: Union, ...drafts: readonly Omit<Draft, 'day'>[]): void {
  const action = newId(union);
  const recordedAt = new Date(union.clock).toISOString();
  for (const draft of drafts) {
    const id = newId(union);
    union.entries.push({
      ...draft,
      id,
      action,
      day: union.day,
      recordedAt,
      recordedBy: union.keeper,
    } as Entry);
  }
}
