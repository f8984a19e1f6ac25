/** The help texts of the command line. */
import type { Command } from './command.ts';
import { COMMANDS } from './commands.ts';

const WIDTH = 96;

function wrapped(text: string, indent: string): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line && indent.length + line.length + 1 + word.length > WIDTH) {
      lines.push(indent + line);
      line = word;
    } else line = line ? `${line} ${word}` : word;
  }
  return [...lines, indent + line].join('\n');
}

/** What `--help` without a command prints. */
export function helpOfAll(): string {
  const longest = Math.max(...Object.keys(COMMANDS).map((name) => name.length));
  return [
    'damline: lineage, kinship and breeding values of queens, from tables.',
    '',
    'Use: npm run -s damline -- COMMAND FILES [OPTIONS]',
    '',
    'Commands:',
    ...Object.entries(COMMANDS).map(([name, { summary }]) => `  ${name.padEnd(longest)}  ${summary}`),
    '',
    'damline COMMAND --help tells more of each.',
    'Exit codes: 0 done; 2 something is wrong with a file or an option: told on standard error by file, line',
    'and column, and nothing is printed to standard output.',
    '',
  ].join('\n');
}

/** What COMMAND `--help` prints. */
export function helpOf(summary: string, { name, files, options, notes }: Command): string {
  const required = options.filter(({ isRequired }) => isRequired);
  const words = [
    name,
    ...files,
    ...required.map((option) => `--${option.name} ${option.value}`),
    '[OPTIONS]',
  ];
  return [
    summary,
    '',
    wrapped(`Use: npm run -s damline -- ${words.join(' ')}`, ''),
    '',
    'Options:',
    ...options.map((option) => `  --${option.name} ${option.value}\n${wrapped(option.help, '      ')}`),
    ...notes.flatMap((note) => ['', wrapped(note, '')]),
    '',
  ].join('\n');
}
