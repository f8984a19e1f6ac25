/** Reads the words after a command: files in order, options as `--name value` or `--name=value`. */
import type { Arguments, Command } from './command.ts';

export type ParsedArguments =
  | { readonly ok: true; readonly given: Arguments }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Files and options of a command; every word that it does not take is a problem. */
export function parseArguments(command: Command, words: readonly string[]): ParsedArguments {
  const positions: string[] = [];
  const options = new Map<string, string>();
  const problems: string[] = [];
  for (let at = 0; at < words.length; at++) {
    const word = words[at] ?? '';
    if (!word.startsWith('--')) {
      positions.push(word);
      continue;
    }
    const equals = word.indexOf('=');
    const name = word.slice(2, equals < 0 ? undefined : equals);
    if (!command.options.some((option) => option.name === name)) {
      problems.push(`--${name} is no option of '${command.name}'. See 'damline ${command.name} --help'.`);
      if (equals < 0 && words[at + 1]?.startsWith('--') === false) at++;
      continue;
    }
    const value = equals < 0 ? words[++at] : word.slice(equals + 1);
    if (value === undefined || (equals < 0 && value.startsWith('--'))) {
      problems.push(`--${name} has no value.`);
    } else if (options.has(name)) problems.push(`--${name} stands twice.`);
    else options.set(name, value);
  }
  problems.push(...missing(command, positions, options));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, given: { positions, options } };
}

function missing(
  { name, files, options }: Command,
  positions: readonly string[],
  given: ReadonlyMap<string, string>,
): string[] {
  const problems = files.slice(positions.length).map((file) => `'${name}' needs ${file}.`);
  for (const word of positions.slice(files.length)) {
    problems.push(`'${word}' is one file too many for '${name}', which takes ${files.join(' ')}.`);
  }
  for (const option of options) {
    if (option.isRequired && !given.has(option.name))
      problems.push(`'${name}' needs --${option.name} ${option.value}.`);
  }
  return problems;
}
