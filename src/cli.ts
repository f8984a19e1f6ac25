/** The command line: `npm run -s damline -- COMMAND`. */
import { fileWorld } from './cli/files.ts';
import { EXIT, runCommandLine } from './cli/run.ts';

/** A reader who has seen enough, as `head`, closes the pipe: no error. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(EXIT.done);
});

process.exitCode = await runCommandLine(process.argv.slice(2), fileWorld);
