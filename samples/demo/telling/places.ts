import type { RoughDay } from '../../../src/journal/day.ts';
import type { LossCause } from '../../../src/journal/entries/colony.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import type { Compass, Place } from '../../../src/journal/entry-parts.ts';
import { addHive, addKeeper, addYard, hiveCalled, type Story, yardCalled } from '../story.ts';

/** Keepers, yards and boxes: opened, started, moved, joined, sold. */

export interface PlaceTold {
  readonly stand?: string;
  readonly underRoofWith?: string;
  readonly entrance?: Compass;
}

export function placeOf(story: Story, told: PlaceTold): Place {
  const { underRoofWith, ...rest } = told;
  return underRoofWith ? { ...rest, underRoofWith: hiveCalled(story, underRoofWith).id } : rest;
}

/** A keeper begins to write, and says who that is. */
export function keeperBegins(story: Story, name: string): void {
  const keeper = addKeeper(story, name);
  story.book.handTo(keeper);
  story.book.write({ kind: 'keeper-named', keeper, name });
}

export function penTo(story: Story, name: string): void {
  const keeper = story.keepers.get(name);
  if (!keeper) throw new Error(`No keeper is called ${name}.`);
  story.book.handTo(keeper);
}

export function openYard(
  story: Story,
  name: string,
  about: { readonly where: string; readonly roundOrder: number; readonly day?: string },
): void {
  const { day, ...rest } = about;
  const yard = addYard(story, name);
  story.book.write({
    kind: 'yard-opened',
    yard: yard.id,
    name,
    ...rest,
    ...(day ? { day: day as RoughDay } : {}),
  });
}

/** What the keeper makes of the drones of a season. */
export function drones(
  story: Story,
  yard: string,
  said: {
    readonly ownShare: number;
    readonly background: string;
    readonly backgroundKinship?: number;
    readonly colonies?: Readonly<Record<string, number>>;
  },
): void {
  const { colonies, ...rest } = said;
  const record = yardCalled(story, yard);
  record.ownShare = said.ownShare;
  const droneColonies = Object.entries(colonies ?? {}).map(([label, weight]) => ({
    colony: hiveCalled(story, label).id,
    weight,
  }));
  story.book.write({
    kind: 'drone-background',
    yard: record.id,
    season: Number(story.book.today().slice(0, 4)),
    ...rest,
    ...(droneColonies.length > 0 ? { droneColonies } : {}),
  });
}

export function startColony(
  story: Story,
  label: string,
  yard: string,
  about: Pick<EntryOf<'colony-started'>, 'how' | 'from' | 'box'> & {
    readonly size: number;
    readonly day?: string;
    readonly place?: PlaceTold;
    readonly remark?: string;
  },
): void {
  const { size, day, place, ...rest } = about;
  const hive = addHive(story, label, yard, size);
  story.book.write({
    kind: 'colony-started',
    colony: hive.id,
    yard: yardCalled(story, yard).id,
    label,
    ...rest,
    ...(place ? { place: placeOf(story, place) } : {}),
    ...(day ? { day: day as RoughDay } : {}),
  });
}

/** Moves boxes to a yard, or turns one where it stands. */
export function move(story: Story, labels: readonly string[], yard: string, place?: PlaceTold): void {
  story.book.write(
    ...labels.map((label) => {
      const hive = hiveCalled(story, label);
      hive.yard = yard;
      return {
        kind: 'colony-moved' as const,
        colony: hive.id,
        yard: yardCalled(story, yard).id,
        ...(place ? { place: placeOf(story, place) } : {}),
      };
    }),
  );
}

/** New labels, in one go: old label to new label. */
export function relabel(story: Story, labels: Readonly<Record<string, string>>): void {
  story.book.write(
    ...Object.entries(labels).map(([old, label]) => {
      const hive = hiveCalled(story, old);
      story.hives.delete(old);
      story.hives.set(label, hive);
      hive.label = label;
      return { kind: 'colony-relabelled' as const, colony: hive.id, label };
    }),
  );
}

export function join(
  story: Story,
  label: string,
  into: string,
  remark?: string,
  queenKept: EntryOf<'colonies-joined'>['queenKept'] = 'of-the-receiving',
): void {
  const given = hiveCalled(story, label);
  const receiving = hiveCalled(story, into);
  given.alive = false;
  receiving.size = Math.min(1.1, receiving.size + given.size * 0.8);
  story.book.write({
    kind: 'colonies-joined',
    colony: given.id,
    into: receiving.id,
    queenKept,
    ...(remark ? { remark } : {}),
  });
}

export function endColony(story: Story, label: string, cause: LossCause, remark?: string): void {
  const hive = hiveCalled(story, label);
  hive.alive = false;
  story.book.write({ kind: 'colony-ended', colony: hive.id, cause, ...(remark ? { remark } : {}) });
}

/** A free note, about a hive, a yard or nothing in particular. */
export function note(
  story: Story,
  text: string,
  about?: { readonly hive?: string; readonly yard?: string },
): void {
  const of = about?.hive
    ? { of: 'colony' as const, colony: hiveCalled(story, about.hive).id }
    : about?.yard
      ? { of: 'yard' as const, yard: yardCalled(story, about.yard).id }
      : undefined;
  story.book.write({ kind: 'note', text, ...(of ? { about: of } : {}) });
}
