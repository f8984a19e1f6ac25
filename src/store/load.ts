import { batch } from '@preact/signals';
import type { PlainDay } from '../journal/day.ts';
import type { Entry } from '../journal/entry.ts';
import type { KeeperId } from '../journal/ids.ts';
import { JOURNAL_VERSION, MIGRATIONS, type Migration, migrateEntry } from '../journal/migrations/index.ts';
import { failure, type Problem, type Result, success } from '../journal/problems.ts';
import { readEntry } from '../journal/write.ts';
import { startProjection } from '../registry/project.ts';
import { type Core, report } from './core.ts';
import { ALL_STORES, type Database, DURABLE, databaseName, openRecords } from './db.ts';
import type { DemoYard } from './options.ts';
import { DEFAULT_SETTINGS, Settings } from './settings.ts';
import { newerDatabase, storageProblem } from './troubles.ts';
import { undoStacks } from './undo.ts';

/** Opens the database of the core's records and reads all of it. False when it could not; the problem is shown. */
export async function load(core: Core): Promise<boolean> {
  const opened = await openRecords(core.records.value, {
    onProblem: (problem) => report(core, problem),
    onClosed: () => {
      core.database = undefined;
    },
  });
  if (!opened.ok) return refused(core, opened.problems);
  core.database = opened.value;
  return reload(core);
}

/** Reads everything again from the open database. */
export async function reload(core: Core): Promise<boolean> {
  const database = core.database;
  if (!database) return false;
  try {
    await migrateDatabase(core, database);
    const demo = await sowDemo(core, database);
    await readAll(core, database, demo);
    return true;
  } catch (error) {
    core.database = undefined;
    database.close();
    return refused(core, error instanceof Refusal ? error.problems : [storageProblem(error, database.name)]);
  }
}

/** Leaves the reading of a database that must stay shut, with what is wrong. */
class Refusal extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems[0]?.because);
    this.problems = problems;
  }
}

function refused(core: Core, problems: readonly Problem[]): false {
  for (const problem of problems) report(core, problem);
  return false;
}

/** Brings entries of an older shape up to date in one transaction; a newer shape is refused. */
async function migrateDatabase(core: Core, database: Database): Promise<void> {
  const version = (await database.get('device', 'journal-version')) as number | undefined;
  if (version === JOURNAL_VERSION) return;
  if (version !== undefined && version > JOURNAL_VERSION) {
    throw new Refusal([newerDatabase(databaseName(core.records.value))]);
  }
  const migrated = migrateEntries(await database.getAll('entries'), version ?? JOURNAL_VERSION);
  if (!migrated.ok) throw new Refusal(migrated.problems);
  const transaction = database.transaction(['entries', 'device'], 'readwrite', DURABLE);
  await Promise.all([
    ...migrated.value.map((entry) => transaction.objectStore('entries').put(entry)),
    transaction.objectStore('device').put(JOURNAL_VERSION, 'journal-version'),
    transaction.done,
  ]);
}

/** Raw entries of an older version, migrated and checked; all or none. */
export function migrateEntries(
  raw: readonly unknown[],
  version: number,
  migrations: readonly Migration[] = MIGRATIONS,
): Result<readonly Entry[]> {
  const entries: Entry[] = [];
  const problems: Problem[] = [];
  raw.forEach((each, index) => {
    const read = readEntry(migrateEntry(each, version, migrations), `Entry ${index + 1} on this device`);
    if (read.ok) entries.push(read.value);
    else problems.push(...read.problems);
  });
  return problems.length > 0 ? failure(problems) : success(entries);
}

/** Puts the demo yard into its empty database. */
async function sowDemo(core: Core, database: Database): Promise<DemoYard | undefined> {
  if (core.records.value !== 'demo' || !core.options.demo) return undefined;
  const demo = await core.options.demo();
  if ((await database.count('entries')) > 0) return demo;
  const transaction = database.transaction(['entries', 'device'], 'readwrite', DURABLE);
  await Promise.all([
    ...demo.entries.map((entry) => transaction.objectStore('entries').put(entry)),
    transaction.objectStore('device').put(demo.keeper, 'keeper'),
    transaction.done,
  ]);
  return demo;
}

async function readAll(core: Core, database: Database, demo: DemoYard | undefined): Promise<void> {
  const transaction = database.transaction(ALL_STORES);
  const device = transaction.objectStore('device');
  const titles = transaction.objectStore('titles');
  const [entries, settings, keeper, asked, titleKeys, titleTexts, imports] = await Promise.all([
    transaction.objectStore('entries').getAll(),
    device.get('settings'),
    device.get('keeper'),
    device.get('persistence-asked'),
    titles.getAllKeys(),
    titles.getAll(),
    transaction.objectStore('imports').getAll(),
    transaction.done,
  ]);
  const keeperId = (keeper as KeeperId | undefined) ?? (await makeKeeper(core, database));
  const journal = new Map(entries.map((entry) => [entry.id, entry]));
  core.titles.clear();
  titleKeys.forEach((action, index) => {
    core.titles.set(action, titleTexts[index] ?? '');
  });
  core.actions.clear();
  core.imports.clear();
  for (const record of imports) core.imports.set(record.id, record);
  core.persistenceAsked = asked === true;
  batch(() => {
    core.keeper.value = keeperId;
    core.settings.value = readSettings(settings);
    core.projection.value = startProjection(journal, core.registry.value.revision);
    core.stacks.value = undoStacks(journal, keeperId, imports);
    if (demo) setDay(core, demo.on);
  });
}

function setDay(core: Core, day: PlainDay): void {
  if (core.on.value === core.today) core.on.value = day;
}

/** Settings are choices and not facts: what cannot be read falls back to the defaults, field by field. */
export function readSettings(stored: unknown): Settings {
  if (typeof stored !== 'object' || stored === null) return DEFAULT_SETTINGS;
  const whole = Settings.safeParse(stored);
  if (whole.success) return whole.data;
  const readable = Object.entries(stored).filter(
    ([key, value]) => Settings.safeParse({ [key]: value }).success,
  );
  return Settings.parse(Object.fromEntries(readable));
}

/** The keeper's id on this device: made once, until a backup of the keeper's own brings theirs back. */
async function makeKeeper(core: Core, database: Database): Promise<KeeperId> {
  const keeper = core.options.newId() as KeeperId;
  await database.put('device', keeper, 'keeper');
  return keeper;
}
