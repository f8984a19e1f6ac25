import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { Meeting } from './registries.ts';
import type { ScaleFigures } from './scale-one.ts';
import type { Seconds } from './timed.ts';

/** Time, memory and growth of the engine by size of the registry. */

type Print = (line: string) => void;

function measured(
  queens: number,
  meeting: Meeting,
  droneMothers: number,
  merit: boolean,
): ScaleFigures | string {
  const words = ['--import', 'tsx', join(import.meta.dirname, 'scale-one.ts')];
  const given = [String(queens), meeting, String(droneMothers), merit ? 'merit' : ''];
  const { stdout, stderr, status } = spawnSync(process.execPath, [...words, ...given], { encoding: 'utf8' });
  return status === 0 ? (JSON.parse(stdout) as ScaleFigures) : stderr.trim().split('\n').slice(-3).join(' ');
}

const COLUMNS = [
  'queens',
  'nodes',
  'compiled, s',
  'processor, s',
  'growth',
  'merit, s',
  'processor, s',
  'iterations',
  'growth',
  'peak MB',
];

const fixed = (value: number | undefined): string => (value === undefined ? '' : value.toFixed(3));

const growth = (now: Seconds | undefined, then: Seconds | undefined): string =>
  now && then ? `x ${(now.processor / then.processor).toFixed(1)}` : '';

function line(words: readonly string[]): string {
  return words.map((word) => word.padStart(13)).join('');
}

function benchSizes(
  print: Print,
  sizes: readonly number[],
  meeting: Meeting,
  droneMothers: number,
  merit: boolean,
): void {
  print(line(COLUMNS));
  let before: ScaleFigures | undefined;
  for (const queens of sizes) {
    const found = measured(queens, meeting, droneMothers, merit);
    if (typeof found === 'string') {
      print(`${queens} queens: ${found}`);
      continue;
    }
    print(
      line([
        String(found.queens),
        String(found.nodes),
        fixed(found.compile.seconds),
        fixed(found.compile.processor),
        growth(found.compile, before?.compile),
        fixed(found.merit?.seconds),
        fixed(found.merit?.processor),
        String(found.iterations ?? ''),
        growth(found.merit, before?.merit),
        String(found.megabytes),
      ]),
    );
    before = found;
  }
}

export function benchScale(print: Print = console.log): void {
  print('Pools of 50 drone mothers, 250 yards and seasons at 100,000 queens, three records a queen.');
  print(
    'Compiled: checks, birth order and all inbreeding coefficients. Each size once, in a process of its own, as a',
  );
  print('command runs; growth is that of processor time, which other work on the machine does not lengthen.');
  benchSizes(print, [100, 1_000, 10_000, 100_000, 1_000_000], 'pool', 50, true);
  print('');
  print(
    'Every queen with a list of 15 drone mothers of her own, out of 100 around her yard: as many sources as queens.',
  );
  print(
    'Columns times rows then grow as the square of the registry; a pool for each yard is what keeps it linear.',
  );
  benchSizes(print, [1_000, 3_000, 10_000, 30_000], 'neighbours', 15, false);
  print('');
  print('The same with 50 drone mothers out of all queens of three seasons: no registry is like this.');
  benchSizes(print, [1_000, 3_000, 10_000], 'strangers', 50, false);
}
