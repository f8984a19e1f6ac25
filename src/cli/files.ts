/** Files, standard output and standard error, as the commands see them. */
import { closeSync, openSync, readFileSync, writeFileSync } from 'node:fs';
import type { Output, World } from './command.ts';

export const fileWorld: World = {
  readText: (path) => readFileSync(path, 'utf8'),
  openOutput: (path) => (path === undefined ? standardOutput() : fileOutput(path)),
  writeError: (text) => {
    process.stderr.write(text);
  },
};

function standardOutput(): Output {
  return {
    write: (text) =>
      new Promise((resolve, reject) => {
        process.stdout.write(text, (error) => (error ? reject(error) : resolve()));
      }),
    close: async () => {},
  };
}

function fileOutput(path: string): Output {
  let file: number | undefined;
  return {
    async write(text) {
      file ??= openSync(path, 'w');
      writeFileSync(file, text);
    },
    async close() {
      if (file !== undefined) closeSync(file);
    },
  };
}
