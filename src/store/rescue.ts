import { canonicalText } from '../journal/journal.ts';
import { failure, type Result, success } from '../journal/problems.ts';
import type { Core } from './core.ts';
import { databaseName, readRaw } from './db.ts';
import { storageProblem } from './troubles.ts';

/**
 * The entries of records that this page leaves shut (they are newer, or do not read), as a journal file just as they
 * stand: a newer Damline reads it, and nothing is lost with the device.
 */
export async function rescue(core: Core): Promise<Result<string>> {
  const records = core.records.peek();
  try {
    const { entries, version, keeper } = await readRaw(records);
    const lines = entries.map((entry) => canonicalText(entry)).sort();
    const head = [
      '"format": "damline-journal"',
      `"version": ${JSON.stringify(version ?? 1)}`,
      `"exported": ${JSON.stringify(core.options.now().toISOString())}`,
      `"by": ${canonicalText({ id: keeper ?? core.keeper.peek(), name: '' })}`,
      '"scope": {"of":"all"}',
    ];
    return success(`{\n${head.join(',\n')},\n"entries": [\n${lines.join(',\n')}\n]\n}\n`);
  } catch (error) {
    return failure([storageProblem(error, databaseName(records))]);
  }
}
