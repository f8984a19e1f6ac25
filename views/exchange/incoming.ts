import { signal } from '@preact/signals';
import type { Answers, ColumnMapping, Mended } from '../../src/exchange/intake/index.ts';
import type { Records } from '../../src/store/contract.ts';
import type { Incoming } from './in/read-incoming.ts';

/** What the keeper has said of a table so far. */
export interface TableWork {
  readonly mapping: readonly ColumnMapping[];
  readonly answers: Answers;
  readonly leaveOut: ReadonlySet<number>;
  /** Cells written anew here; the keeper's own table stays as it was. */
  readonly mended: Mended;
}

export interface OpenIncoming {
  /** The records that were open when it was read; it goes into no others. */
  readonly records: Records;
  readonly incoming: Incoming;
  /** For a table. */
  readonly work?: TableWork;
}

/**
 * What is coming in, until it is taken in or put away. It outlives the screen, so that a keeper may look something up
 * in between; a reload forgets it, since nothing of it was written.
 */
export const opened = signal<OpenIncoming | undefined>(undefined);

/** What was taken in last, said on the screen until it is left. */
export const takenIn = signal<string | undefined>(undefined);
