/** Runs one line of the command line and says how it ended. */
import { parseArguments } from './arguments.ts';
import type { Arguments, Command, Outcome, World } from './command.ts';
import { COMMANDS } from './commands.ts';
import { helpOf, helpOfAll } from './help.ts';

export const EXIT = { done: 0, refused: 2 } as const;

/** Problems told one by one; beyond, only their number. */
const PROBLEMS_TOLD = 20;

const HELP = ['help', '--help', '-h'];

/** Runs one command and gives its exit code: 0 done, 2 something is wrong with a file or an option. */
export async function runCommandLine(words: readonly string[], world: World): Promise<number> {
  const asksForHelp = words.some((word, at) => (at === 0 ? HELP : HELP.slice(1)).includes(word));
  const [name, ...rest] = words.filter((word, at) => !(at === 0 && HELP.includes(word)));
  if (name === undefined) return say(world, helpOfAll(), !asksForHelp);
  const listed = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (!listed) return refuse(world, [`'${name}' is no command. See 'damline --help'.`]);
  const command = await listed.load();
  if (asksForHelp) return say(world, helpOf(listed.summary, command), false);
  const parsed = parseArguments(command, rest);
  if (!parsed.ok) return refuse(world, parsed.problems);
  const outcome = await attempt(command, parsed.given, world);
  return outcome.ok ? EXIT.done : refuse(world, outcome.problems);
}

/** What the machine refuses, a full disk or a folder that is not there, is told like any other problem. */
async function attempt(command: Command, given: Arguments, world: World): Promise<Outcome> {
  try {
    return await command.run(given, world);
  } catch (error) {
    if (!(error instanceof Error && 'syscall' in error)) throw error;
    return { ok: false, problems: [`The result cannot be written: ${error.message}.`] };
  }
}

async function say(world: World, text: string, isRefused: boolean): Promise<number> {
  if (isRefused) {
    world.writeError(text);
    return EXIT.refused;
  }
  const out = world.openOutput(undefined);
  await out.write(text);
  await out.close();
  return EXIT.done;
}

function refuse(world: World, problems: readonly string[]): number {
  const told = problems.slice(0, PROBLEMS_TOLD);
  if (problems.length > told.length) told.push(`and ${problems.length - told.length} more like these.`);
  world.writeError(`${told.join('\n')}\n`);
  return EXIT.refused;
}
