import type { ReadonlySignal, Signal } from '@preact/signals';
import type { PlainDay } from '../journal/day.ts';
import type { Draft, Entry } from '../journal/entry.ts';
import type { ActionId, EntryId, KeeperId, PhotoId } from '../journal/ids.ts';
import type { Altered, Disagreement, Journal } from '../journal/journal.ts';
import type { Problem, Result } from '../journal/problems.ts';
import type { Contradiction, Registry } from '../registry/state.ts';
import type { Compute } from '../workers/messages.ts';
import type { StoredPhoto } from './db.ts';
import type { EvaluationState } from './evaluation.ts';
import type { Settings } from './settings.ts';

/** Which records are open: the keeper's own, or the demo yard, kept apart from them. */
export type Records = 'own' | 'demo';

export interface Keeper {
  readonly id: KeeperId;
  readonly name: string;
}

/** One confirmation by the keeper, as undo and redo name it. */
export interface WrittenAction {
  readonly action: ActionId;
  /** What it was, in words: "Split of Hive 3". */
  readonly title: string;
  readonly entries: readonly Entry[];
}

/** What an import would do, shown before anything is written. */
export interface UnionPreview {
  readonly added: readonly Entry[];
  readonly same: number;
  readonly altered: readonly Altered[];
  readonly disagreements: readonly Disagreement[];
  /** Contradictions that would stand after the import and do not stand now. */
  readonly contradictions: readonly Contradiction[];
}

/**
 * The one door between the screens and the records. Screens read signals and call the commands; nothing else
 * changes state. Every command is saved before it answers, and can be undone.
 */
export interface Store {
  readonly records: ReadonlySignal<Records>;
  readonly registry: ReadonlySignal<Registry>;
  readonly journal: ReadonlySignal<Journal>;
  readonly disagreements: ReadonlySignal<readonly Disagreement[]>;
  /** The day that the screens speak of: today, unless the keeper looks back (or ahead, in the demo). */
  readonly on: Signal<PlainDay>;
  readonly keeper: ReadonlySignal<Keeper>;
  readonly settings: ReadonlySignal<Settings>;
  /** Problems of the machine (storage full, another tab has a newer version), shown until handled. */
  readonly problems: Signal<readonly Problem[]>;
  /** The last action that undo would take back, and the last undone that redo would bring back. */
  readonly lastAction: ReadonlySignal<WrittenAction | undefined>;
  readonly lastUndone: ReadonlySignal<WrittenAction | undefined>;

  /** A new UUIDv7, for the colonies, queens and yards that drafts bring into being. */
  newId(): string;

  /**
   * Contradictions that these drafts would bring, without writing them. Cheap enough to call on each tap.
   */
  check(drafts: readonly Draft[]): readonly Contradiction[];
  /**
   * Writes all drafts as one action, or none. Refused with problems when a field is invalid, or when they
   * contradict the journal and the draft does not overrule that rule with a reason.
   */
  write(drafts: readonly Draft[], title: string): Promise<Result<readonly Entry[]>>;
  /** Replaces an entry by a corrected version. */
  correct(id: EntryId, draft: Draft): Promise<Result<readonly Entry[]>>;
  /** Withdraws entries; they stay readable in the history. */
  withdraw(ids: readonly EntryId[], reason?: string): Promise<Result<readonly Entry[]>>;
  undo(): Promise<Result<readonly Entry[]>>;
  redo(): Promise<Result<readonly Entry[]>>;

  previewUnion(entries: readonly Entry[]): UnionPreview;
  /**
   * Unites with a journal read from a file, and its photographs; all or nothing. `keeper` is given where the file is the
   * keeper's own, from another device: from then on this device writes under that id, until the import is undone.
   */
  unite(
    entries: readonly Entry[],
    photos?: readonly StoredPhoto[],
    keeper?: KeeperId,
  ): Promise<Result<UnionPreview>>;

  changeSettings(change: Partial<Settings>): Promise<void>;
  nameKeeper(name: string): Promise<void>;

  /** Breeding values, kinship and what daughters would meet, while `watchEvaluation` is on. */
  readonly evaluation: ReadonlySignal<EvaluationState>;
  /** Keeps the evaluation in step with the records until the function it returns is called. */
  watchEvaluation(): () => void;
  /** Other work for the numerics: one mating, the trade-off, a look ahead, variances. */
  readonly compute: Compute;

  savePhoto(photo: Blob): Promise<Result<PhotoId>>;
  photo(id: PhotoId): Promise<Blob | undefined>;
  /** All photographs, for a file that carries them. */
  photos(): Promise<readonly StoredPhoto[]>;

  /** Opens the demo yard, or the keeper's own records. */
  open(records: Records): Promise<void>;
  /**
   * Text of a journal file with the entries just as they stand on this device, also when the records could not be
   * opened: the way out of a page that is older than its records.
   */
  rescue(): Promise<Result<string>>;
  /** Deletes the open records for good, after the screen has asked. */
  wipe(): Promise<void>;
}
