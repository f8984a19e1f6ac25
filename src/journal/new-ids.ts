import { uuidv7 } from 'uuidv7';
import type { ColonyId, EntryId, QueenId, YardId } from './ids.ts';

/** New ids for what a screen is about to record; they rise from call to call. */
export function newYardId(): YardId {
  return uuidv7() as YardId;
}

/** An id for a colony that a draft starts. */
export function newColonyId(): ColonyId {
  return uuidv7() as ColonyId;
}

/** An id for a queen whom a draft enters or expects. */
export function newQueenId(): QueenId {
  return uuidv7() as QueenId;
}

/** An id for anything else that must be told apart. */
export function newEntryId(): EntryId {
  return uuidv7() as EntryId;
}
