import type { PlainDay } from '../../../src/journal/day.ts';
import type { CellAge, PartQueen } from '../../../src/journal/entries/increase.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import type { FrameCounts, Parentage } from '../../../src/journal/entry-parts.ts';
import type { Said } from '../book.ts';
import { growTo, type Hive } from '../hives.ts';
import {
  addDaughter,
  addHive,
  headName,
  hiveCalled,
  queenCalled,
  type Story,
  takesOver,
  yardCalled,
} from '../story.ts';
import { type PlaceTold, placeOf } from './places.ts';
import { WITH_EGGS } from './usual.ts';

/** Splits, cells, eggs and grafts. Each says whose eggs the queens come from. */

export type PartQueenTold =
  | { readonly how: 'old-queen' }
  | { readonly how: 'raises-own'; readonly name: string; readonly from: RaisedFrom; readonly dam?: string }
  | {
      readonly how: 'given-cells';
      readonly name: string;
      readonly dam: string;
      readonly cellsFrom: string;
      readonly age: CellAge;
      readonly cells?: number;
    }
  | { readonly how: 'given-queen'; readonly name: string }
  | { readonly how: 'none' };

type RaisedFrom = Extract<PartQueen, { how: 'raises-own' }>['from'];

export interface PartTold {
  readonly box: string;
  readonly queen: PartQueenTold;
  readonly frames?: FrameCounts;
  readonly place?: PlaceTold;
}

export const oldQueen: PartQueenTold = { how: 'old-queen' };
export const noQueen: PartQueenTold = { how: 'none' };

export function raises(name: string, from: RaisedFrom = 'eggs', dam?: string): PartQueenTold {
  return { how: 'raises-own', name, from, ...(dam ? { dam } : {}) };
}

export function part(box: string, queen: PartQueenTold, frames?: FrameCounts, place?: PlaceTold): PartTold {
  return { box, queen, ...(frames ? { frames } : {}), ...(place ? { place } : {}) };
}

const NUCLEUS_SIZE = 0.36;

/** Takes a colony apart. Boxes that are not there yet are started beside the source in the same action. */
export function split(story: Story, source: string, parts: readonly PartTold[], remark?: string): void {
  const hive = hiveCalled(story, source);
  const old = hive.head;
  growTo(hive, story.book.today());
  const started: Said[] = [];
  for (const { box, place } of parts) {
    if (box === source || story.hives.get(box)?.alive) continue;
    started.push(startPart(story, hive, box, place));
    hive.size = Math.max(0.4, hive.size - 0.2);
  }
  if (parts.some(({ queen, box }) => queen.how === 'old-queen' && box !== source)) hive.head = undefined;
  const told = parts.map(({ box, queen, frames }) => ({
    colony: hiveCalled(story, box).id,
    queen: partQueen(story, hiveCalled(story, box), queen, old),
    ...(frames ? { frames } : {}),
  }));
  story.book.write(...started, {
    kind: 'split',
    source: hive.id,
    parts: told,
    ...(remark ? { remark } : {}),
  });
}

/** The usual way: one nucleus taken off with eggs to raise from, the old queen staying where she is. */
export function splitOff(
  story: Story,
  source: string,
  box: string,
  queen: PartQueenTold,
  frames: FrameCounts = WITH_EGGS,
  remark?: string,
): void {
  split(story, source, [part(source, oldQueen), part(box, queen, frames)], remark);
}

function startPart(story: Story, source: Hive, label: string, place: PlaceTold | undefined): Said {
  const part = addHive(story, label, source.yard, NUCLEUS_SIZE, source.mothers.at(-1)?.queen);
  part.mites = source.mites;
  return {
    kind: 'colony-started',
    colony: part.id,
    yard: yardCalled(story, source.yard).id,
    label,
    how: 'split',
    box: 'six-frame nucleus',
    ...(place ? { place: placeOf(story, place) } : {}),
  };
}

function partQueen(story: Story, hive: Hive, told: PartQueenTold, old: string | undefined): PartQueen {
  switch (told.how) {
    case 'none':
      return { how: 'none' };
    case 'old-queen':
      if (!old) throw new Error(`${hive.label} gets an old queen, and there is none.`);
      if (hive.head !== old) takesOver(story, old, hive);
      return { how: 'old-queen', queen: queenCalled(story, old).id };
    case 'given-queen':
      takesOver(story, told.name, hive);
      return { how: 'given-queen', queen: queenCalled(story, told.name).id };
    case 'raises-own': {
      const dam = told.dam ?? old;
      if (!dam) throw new Error(`Nobody laid the eggs that ${hive.label} is to raise from.`);
      const expected = addDaughter(story, told.name, dam, hive).id;
      return {
        how: 'raises-own',
        expected,
        from: told.from,
        parentage: daughterOf(story, dam, 'dam-in-colony'),
      };
    }
    case 'given-cells': {
      const expected = addDaughter(story, told.name, told.dam, hive).id;
      return {
        how: 'given-cells',
        expected,
        parentage: daughterOf(story, told.dam, 'eggs-named'),
        cellsFrom: hiveCalled(story, told.cellsFrom).id,
        age: told.age,
        ...(told.cells ? { cells: told.cells } : {}),
      };
    }
  }
}

function daughterOf(story: Story, dam: string, evidence: Parentage['evidence']): Parentage {
  return { dams: [{ queen: queenCalled(story, dam).id, probability: 1 }], evidence };
}

/** Cells carried into a box. They are daughters of the queen who laid the eggs, wherever the frame hung. */
export function cellsGiven(
  story: Story,
  to: string,
  told: {
    readonly queen: string;
    readonly dam: string;
    readonly from?: string;
    readonly age: CellAge;
    readonly cells?: number;
    readonly eggsLaid?: string;
    readonly graft?: string;
    readonly remark?: string;
  },
): void {
  const { queen, dam, from, eggsLaid, ...rest } = told;
  const hive = hiveCalled(story, to);
  story.book.write({
    kind: 'cells-given',
    to: hive.id,
    expected: addDaughter(story, queen, dam, hive).id,
    parentage: daughterOf(story, dam, 'eggs-named'),
    ...(from ? { from: hiveCalled(story, from).id } : {}),
    ...(eggsLaid ? { eggsLaid: eggsLaid as PlainDay } : {}),
    ...rest,
  });
}

/** A frame of eggs given to a box without a queen. Two dams where the keeper can no longer tell the frames apart. */
export function eggsGiven(
  story: Story,
  to: string,
  told: { readonly queen: string; readonly from: string; readonly orFrom?: string; readonly remark?: string },
): void {
  const hive = hiveCalled(story, to);
  const dams = [told.from, ...(told.orFrom ? [told.orFrom] : [])].map((label) => headName(story, label));
  const expected = addDaughter(story, told.queen, dams[0] ?? '', hive).id;
  story.book.write({
    kind: 'eggs-given',
    to: hive.id,
    ...(told.orFrom ? {} : { from: hiveCalled(story, told.from).id }),
    expected,
    parentage: {
      dams: dams.map((dam) => ({ queen: queenCalled(story, dam).id, probability: 1 / dams.length })),
      evidence: 'eggs-named',
    },
    ...(told.remark ? { remark: told.remark } : {}),
  });
}

export function graft(
  story: Story,
  builder: string,
  told: Pick<EntryOf<'graft'>, 'name' | 'larvae' | 'larvaAgeDays' | 'accepted' | 'remark'> & {
    readonly dam: string;
  },
): EntryOf<'graft'> {
  const { dam, ...rest } = told;
  const [entry] = story.book.write({
    kind: 'graft',
    builder: hiveCalled(story, builder).id,
    parentage: daughterOf(story, dam, 'eggs-named'),
    ...rest,
  });
  if (entry?.kind !== 'graft') throw new Error('A graft was not written as one.');
  return entry;
}

/** Frames carried over without making a queen. */
export function framesMoved(
  story: Story,
  from: string,
  to: string,
  frames: FrameCounts,
  more: { readonly aboveExcluder?: boolean; readonly remark?: string } = {},
): void {
  story.book.write({
    kind: 'frames-moved',
    from: hiveCalled(story, from).id,
    to: hiveCalled(story, to).id,
    frames,
    ...more,
  });
}
