/** The command line's world in memory: files by name, and what was written where. */
import type { World } from '../../src/cli/command.ts';
import { runCommandLine } from '../../src/cli/run.ts';

export interface Ran {
  readonly code: number;
  /** Standard output. */
  readonly out: string;
  readonly error: string;
  /** Files written. */
  readonly written: ReadonlyMap<string, string>;
}

export async function run(line: string, files: Readonly<Record<string, string>>): Promise<Ran> {
  const written = new Map<string, string>();
  let out = '';
  let error = '';
  const world: World = {
    readText(path) {
      const text = files[path];
      if (text === undefined) throw new Error('no such file');
      return text;
    },
    openOutput: (path) => ({
      async write(text) {
        if (path === undefined) out += text;
        else written.set(path, (written.get(path) ?? '') + text);
      },
      async close() {},
    }),
    writeError(text) {
      error += text;
    },
  };
  const code = await runCommandLine(
    line.split(' ').filter((word) => word !== ''),
    world,
  );
  return { code, out, error, written };
}
