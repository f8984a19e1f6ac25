/** An invented registry as the tables of the command line, with three records a queen on average. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PedigreeInput, Share } from '../../graph/kinship/pedigree-input.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';

const shares = (list: readonly Share[]): string => list.map(({ of, share }) => `${of}:${share}`).join(';');

export interface TableFiles {
  readonly pedigree: string;
  readonly pools: string;
  readonly records: string;
}

export function writeTables(input: PedigreeInput, folder: string, seed = 1): TableFiles {
  const files = {
    pedigree: join(folder, 'pedigree.csv'),
    pools: join(folder, 'pools.csv'),
    records: join(folder, 'records.csv'),
  };
  const queens = input.queens.map(({ id, dams, mating, effectiveMates, background }) => {
    const mothers =
      mating?.kind === 'pool'
        ? `pool:${mating.pool}`
        : mating?.kind === 'drone-mothers'
          ? shares(mating.droneMothers)
          : '';
    return `${id},${dams[0]?.of ?? ''},${mothers},${mating ? effectiveMates : ''},${background},local`;
  });
  const pools = input.pools.map(({ id, droneMothers }) => `${id},${shares(droneMothers)},local`);
  writeFileSync(
    files.pedigree,
    ['queen,dam,drone_mothers,mates,background,mates_background', ...queens, ''].join('\n'),
  );
  writeFileSync(files.pools, ['pool,drone_mothers,background', ...pools, ''].join('\n'));
  writeFileSync(files.records, records(input, seed));
  return files;
}

function records({ queens }: PedigreeInput, seed: number): string {
  const random = randomGenerator(seed);
  const lines = ['queen,group,value,sampling_variance'];
  const groups = Math.max(2, Math.round(queens.length / 40));
  for (let k = 0; k < 3 * queens.length; k++) {
    const queen = random.choice(queens).id;
    lines.push(
      `${queen},G${random.integer(groups)},${(10 + random.normal()).toFixed(3)},${random.integer(2) / 10}`,
    );
  }
  return `${lines.join('\n')}\n`;
}
