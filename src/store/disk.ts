import { failure, type Result, success } from '../journal/problems.ts';
import { type Core, report } from './core.ts';
import { type Database, databaseName } from './db.ts';
import { load } from './load.ts';
import { closedRecords, storageProblem } from './troubles.ts';

/** Runs a write on the open database. What the storage refuses comes back as a problem, and is shown. */
export async function onDisk<T>(core: Core, write: (database: Database) => Promise<T>): Promise<Result<T>> {
  const name = databaseName(core.records.value);
  // A connection that was lost is opened once more, and everything read again.
  if (!core.database) await load(core);
  if (!core.database) return failure([closedRecords(name)]);
  try {
    return success(await write(core.database));
  } catch (error) {
    const problem = storageProblem(error, name);
    report(core, problem);
    return failure([problem]);
  }
}
