/**
 * The commands of the command line, one file each. Their code is loaded when they are called for: a table of
 * queens should not wait for what it does not use.
 */
import type { Command } from './command.ts';

export const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  kinship: async () => (await import('./kinship.ts')).kinshipCommand,
  inbreeding: async () => (await import('./inbreeding.ts')).inbreedingCommand,
  merit: async () => (await import('./merit.ts')).meritCommand,
  check: async () => (await import('./check.ts')).checkCommand,
  rank: async () => (await import('./rank.ts')).rankCommand,
  trace: async () => (await import('./trace.ts')).traceCommand,
};
