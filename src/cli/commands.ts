/**
 * The commands of the command line, one file each. Their code is loaded when they are called for: a table of
 * queens should not wait for what it does not use, nor the help for any of them.
 */
import type { Command } from './command.ts';

export interface ListedCommand {
  /** One line for the list of commands. */
  readonly summary: string;
  readonly load: () => Promise<Command>;
}

export const COMMANDS: Readonly<Record<string, ListedCommand>> = {
  kinship: {
    summary: 'Kinship of every pair of queens, or of those you name.',
    load: async () => (await import('./kinship.ts')).kinshipCommand,
  },
  inbreeding: {
    summary: 'Inbreeding of each queen, and of the brood she has with the drones she met.',
    load: async () => (await import('./inbreeding.ts')).inbreedingCommand,
  },
  merit: {
    summary: 'Breeding values of all queens from records of their colonies.',
    load: async () => (await import('./merit.ts')).meritCommand,
  },
  check: {
    summary: 'Whether a journal file can be read, and where its entries contradict one another.',
    load: async () => (await import('./check.ts')).checkCommand,
  },
  rank: {
    summary: 'The laying queens of a journal file, by the weighted index of their breeding values.',
    load: async () => (await import('./rank.ts')).rankCommand,
  },
  trace: {
    summary: 'The dam line of a queen, step by step, to the founder.',
    load: async () => (await import('./trace.ts')).traceCommand,
  },
};
