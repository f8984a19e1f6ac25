/** What a command of the command line is, and what it may touch. */

/** The world outside, handed in, so that commands can be run in tests. */
export interface World {
  /** Text of a file. Throws where it cannot be read. */
  readonly readText: (path: string) => string;
  /** Where the result goes: the file at `path`, or standard output. Nothing is created before the first write. */
  readonly openOutput: (path: string | undefined) => Output;
  readonly writeError: (text: string) => void;
}

export interface Output {
  readonly write: (text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface Option {
  /** Without the leading dashes. */
  readonly name: string;
  /** Word for its value in the help. */
  readonly value: string;
  readonly help: string;
  readonly isRequired?: boolean;
}

/** Words after the command: positions in order, options by name. */
export interface Arguments {
  readonly positions: readonly string[];
  readonly options: ReadonlyMap<string, string>;
}

/** What went wrong, in the keeper's words, one sentence or two each. */
export type Outcome = { readonly ok: true } | { readonly ok: false; readonly problems: readonly string[] };

export interface Command {
  readonly name: string;
  /** Names of the files it takes, in order. */
  readonly files: readonly string[];
  readonly options: readonly Option[];
  /** Paragraphs that follow in its help. */
  readonly notes: readonly string[];
  readonly run: (given: Arguments, world: World) => Promise<Outcome>;
}

export const OUT_OPTION: Option = {
  name: 'out',
  value: 'FILE',
  help: 'Write the result to FILE instead of standard output.',
};
