import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inventedRegistry, registryShape } from './registries.ts';
import { writeTables } from './tables.ts';

/** The whole command, process, reading and writing included, on a table of 100,000 queens with a pools file. */

const QUEENS = 100_000;
const VARIANCES =
  '--worker-variance 0.3 --queen-variance 0.3 --covariance -0.1 --permanent-variance 0.2 --residual-variance 1';

export function benchCommandLine(print: (line: string) => void = console.log): void {
  const folder = mkdtempSync(join(tmpdir(), 'damline-bench-'));
  const { pedigree, pools, records } = writeTables(inventedRegistry(registryShape(QUEENS)), folder);
  const common = `--pools ${pools} --background local=0.03 --out ${join(folder, 'out.csv')}`;
  const lines = [
    '--help',
    `inbreeding ${pedigree} ${common}`,
    `kinship ${pedigree} ${common} --pairs Q0,Q1000,Q50000,Q99999`,
    `merit ${pedigree} ${records} ${common} ${VARIANCES}`,
  ];
  for (const words of lines) {
    const begin = performance.now();
    const { status, stderr } = spawnSync('npm', ['run', '-s', 'damline', '--', ...words.split(' ')], {
      encoding: 'utf8',
    });
    const seconds = ((performance.now() - begin) / 1000).toFixed(2);
    print(
      `${(words.split(' ')[0] ?? '').padEnd(12)} ${seconds.padStart(6)} s${status === 0 ? '' : `  FAILED: ${stderr}`}`,
    );
  }
  rmSync(folder, { recursive: true });
}
