import * as z from 'zod';
import {
  ColoniesJoined,
  ColonyEnded,
  ColonyMoved,
  ColonyRelabelled,
  ColonyStarted,
  FramesMoved,
} from './entries/colony.ts';
import { CellsGiven, EggsGiven, Graft, Split } from './entries/increase.ts';
import {
  Feeding,
  Harvest,
  HygienicTest,
  Inspection,
  MiteCount,
  Treatment,
  TreatmentEnded,
  WinterOutcome,
} from './entries/observation.ts';
import { KeeperNamed, Note, TaskSettled, Withdrawal } from './entries/paper.ts';
import {
  Mating,
  ParentageStated,
  QueenConfirmed,
  QueenEntered,
  QueenExpected,
  QueenFound,
  QueenLost,
  QueenMarked,
  QueenMoved,
  QueenNamed,
} from './entries/queen.ts';
import { DroneBackground, YardOpened } from './entries/yard.ts';

/** Every entry a journal may hold. This union is the only source of the types; forms and documents read it too. */
export const Entry = z.discriminatedUnion('kind', [
  YardOpened,
  DroneBackground,
  ColonyStarted,
  ColonyMoved,
  ColonyRelabelled,
  ColoniesJoined,
  ColonyEnded,
  FramesMoved,
  QueenEntered,
  QueenExpected,
  QueenFound,
  QueenConfirmed,
  QueenMarked,
  QueenNamed,
  QueenLost,
  QueenMoved,
  ParentageStated,
  Mating,
  Split,
  CellsGiven,
  EggsGiven,
  Graft,
  Inspection,
  MiteCount,
  Treatment,
  TreatmentEnded,
  WinterOutcome,
  HygienicTest,
  Harvest,
  Feeding,
  KeeperNamed,
  Note,
  Withdrawal,
  TaskSettled,
]);
export type Entry = z.infer<typeof Entry>;
export type EntryKind = Entry['kind'];
export type EntryOf<K extends EntryKind> = Extract<Entry, { kind: K }>;

/** What the keeper says; `writeEntries` adds id, action, and when and by whom it was recorded. */
export type Draft<K extends EntryKind = EntryKind> = K extends EntryKind
  ? Omit<EntryOf<K>, 'id' | 'action' | 'recordedAt' | 'recordedBy'>
  : never;

/** The words for a kind of entry, from its schema. */
export function kindTitle(kind: EntryKind): string {
  return TITLES.get(kind) ?? kind;
}

const TITLES: ReadonlyMap<string, string> = new Map(
  Entry.options.map((option) => [option.shape.kind.value, option.description ?? option.shape.kind.value]),
);
