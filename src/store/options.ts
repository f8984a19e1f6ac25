import { uuidv7 } from 'uuidv7';
import type { PlainDay } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { KeeperId } from '../journal/ids.ts';
import { computeInWorker } from '../workers/client.ts';
import type { Compute } from '../workers/messages.ts';
import type { Records } from './contract.ts';

/** The invented yard that a first visitor can walk through. */
export interface DemoYard {
  readonly entries: readonly Entry[];
  /** The keeper who wrote it; undo works on their actions. */
  readonly keeper: KeeperId;
  /** The day on which the demo opens. */
  readonly on: PlainDay;
}

/** Where the store meets the machine. Tests pass their own. */
export interface StoreOptions {
  readonly records: Records;
  readonly now: () => Date;
  /** Makes UUIDv7s that rise from call to call. */
  readonly newId: () => string;
  readonly demo?: () => Promise<DemoYard>;
  /** Asks the browser to keep the data for good; asked once, after the first record of the keeper's own. */
  readonly askToPersist?: () => Promise<boolean>;
  /** Where the numerics run; started with the first task. */
  readonly compute: () => Compute;
  /** False leaves other tabs alone. */
  readonly tabs: boolean;
}

export const DEFAULT_OPTIONS: StoreOptions = {
  records: 'own',
  now: () => new Date(),
  newId: uuidv7,
  askToPersist: async () => (await globalThis.navigator?.storage?.persist?.()) ?? false,
  compute: () => computeInWorker(),
  tabs: true,
};
