import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { localDay, type PlainDay } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { ActionId, KeeperId } from '../journal/ids.ts';
import type { Journal } from '../journal/journal.ts';
import type { Problem } from '../journal/problems.ts';
import type { Scribe } from '../journal/write.ts';
import { type Projection, startProjection } from '../registry/project.ts';
import type { Registry } from '../registry/state.ts';
import type { Channel } from './channel.ts';
import type { Records } from './contract.ts';
import type { Database, ImportRecord } from './db.ts';
import type { StoreOptions } from './options.ts';
import { DEFAULT_SETTINGS, type Settings } from './settings.ts';
import { NOTHING_DONE, type UndoStacks } from './undo.ts';

/** What every command of the store works on. Signals change only after the disk has the data. */
export interface Core {
  readonly options: StoreOptions;
  readonly records: Signal<Records>;
  readonly projection: Signal<Projection>;
  readonly journal: ReadonlySignal<Journal>;
  readonly registry: ReadonlySignal<Registry>;
  readonly on: Signal<PlainDay>;
  readonly keeper: Signal<KeeperId>;
  readonly settings: Signal<Settings>;
  readonly problems: Signal<readonly Problem[]>;
  readonly stacks: Signal<UndoStacks>;
  /** Words of each action written on this device. */
  readonly titles: Map<ActionId, string>;
  /** Entries of actions looked up before. */
  readonly actions: Map<ActionId, readonly Entry[]>;
  readonly imports: Map<ActionId, ImportRecord>;
  /** The day that `on` was last set to by the clock; while `on` is still this day, it follows the clock. */
  today: PlainDay;
  database: Database | undefined;
  channel: Channel | undefined;
  persistenceAsked: boolean;
  /** The command in hand; the next one waits for it. */
  queue: Promise<unknown>;
}

/** A store before anything is read from the disk. */
export function createCore(options: StoreOptions): Core {
  const projection = signal(startProjection(new Map()));
  const today = localDay(options.now());
  return {
    options,
    records: signal<Records>(options.records),
    projection,
    journal: computed(() => projection.value.journal),
    registry: computed(() => projection.value.registry),
    on: signal(today),
    keeper: signal(options.newId() as KeeperId),
    settings: signal(DEFAULT_SETTINGS),
    problems: signal<readonly Problem[]>([]),
    stacks: signal(NOTHING_DONE),
    titles: new Map(),
    actions: new Map(),
    imports: new Map(),
    today,
    database: undefined,
    channel: undefined,
    persistenceAsked: false,
    queue: Promise.resolve(),
  };
}

/** The scribe who writes for the keeper of this device. */
export function scribeOf(core: Core): Scribe {
  return { keeper: core.keeper.value, now: core.options.now, newId: core.options.newId };
}

/** Runs commands one after the other, so that each is checked against what the one before left. */
export function inTurn<T>(core: Core, command: () => Promise<T>): Promise<T> {
  const turn = core.queue.then(command, command);
  core.queue = turn.catch(() => undefined);
  return turn;
}

/** Adds a problem to those shown, once. */
export function report(core: Core, problem: Problem): void {
  const known = core.problems.value.some(
    ({ code, because }) => code === problem.code && because === problem.because,
  );
  if (!known) core.problems.value = [...core.problems.value, problem];
}

/** The day on the clock has changed: `on` follows, unless the keeper looks at another day. */
export function followClock(core: Core): void {
  const today = localDay(core.options.now());
  if (core.on.value === core.today) core.on.value = today;
  core.today = today;
}
