import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'damline-'));
const root = join(import.meta.dirname, '../../..');
afterAll(() => rmSync(folder, { recursive: true }));

function damline(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', join(root, 'src/cli.ts'), ...words],
    {
      cwd: root,
      encoding: 'utf8',
    },
  );
  return { code: status, out: stdout, error: stderr };
}

describe('the command line as a process', () => {
  const file = join(folder, 'p.csv');
  writeFileSync(
    file,
    'queen,dam,drone_mothers,mates,background,mates_background\nA,,,1,near,near\nB,A,,,,\n',
  );

  it('prints the result and ends with 0', () => {
    const { code, out, error } = damline('kinship', file, '--background', 'near=0');
    expect({ code, out, error }).toEqual({
      code: 0,
      out: 'queen_a,queen_b,kinship\nA,A,0.5\nA,B,0.25\nB,B,0.5\n',
      error: '',
    });
  });

  it('writes a file, or says why it cannot', () => {
    const target = join(folder, 'out.csv');
    expect(damline('inbreeding', file, '--out', target)).toEqual({ code: 0, out: '', error: '' });
    expect(readFileSync(target, 'utf8')).toBe('queen,inbreeding,brood_inbreeding\nA,0,0\nB,0,\n');
    const refused = damline('inbreeding', file, '--out', join(folder, 'no/such/out.csv'));
    expect([refused.code, refused.out]).toEqual([2, '']);
    expect(refused.error).toContain('The result cannot be written');
  });

  it('ends with 2 and prints nothing to standard output when a file is wrong', () => {
    const { code, out, error } = damline('inbreeding', join(folder, 'none.csv'));
    expect([code, out]).toEqual([2, '']);
    expect(error).toContain('none.csv');
  });
});
