/** The option `--background`: populations nobody recorded, with the kinship within each. */
import type { BackgroundInput } from '../../graph/kinship/pedigree-input.ts';
import type { Option } from './command.ts';
import { numberIn } from './table.ts';

export const BACKGROUND_OPTION: Option = {
  name: 'background',
  value: 'NAME=KINSHIP,...',
  help:
    'Kinship (0 to 1) of two random gametes of each background the tables name, as local=0.03,bought=0. ' +
    'Without this option every background is taken as unrelated bees (0); with it, a background that is not ' +
    'listed is an error. An empty background always means unrelated bees.',
};

/** Backgrounds of a pedigree, gathered as the tables name them. */
export interface Backgrounds {
  /** A sentence if a table may not use this name. */
  readonly use: (name: string) => string | undefined;
  readonly used: () => BackgroundInput[];
}

/** The `--background` option: NAME=KINSHIP, comma-separated, kinship 0..1. Appends to `problems`. */
export function readBackgrounds(text: string | undefined, problems: string[]): Backgrounds {
  const listed = new Map<string, number>();
  for (const entry of text === undefined ? [] : text.split(',')) {
    const [name = '', value = '', ...more] = entry.split('=').map((part) => part.trim());
    const kinship = numberIn(value);
    if (name === '' || more.length > 0 || kinship === undefined) {
      problems.push(`--background: '${entry}' is not NAME=KINSHIP, as in local=0.03.`);
    } else if (kinship < 0 || kinship > 1) {
      problems.push(`--background: the kinship of '${name}' is ${value}; it lies between 0 and 1.`);
    } else if (listed.has(name)) problems.push(`--background: '${name}' stands twice.`);
    else listed.set(name, kinship);
  }
  const used = new Map<string, number>();
  return {
    use(name) {
      if (used.has(name)) return undefined;
      const kinship = listed.get(name);
      if (kinship === undefined && text !== undefined && name !== '') {
        return `'${name}' is no background listed with --background. List it, or correct the name.`;
      }
      used.set(name, kinship ?? 0);
      return undefined;
    },
    used: () => [...used].map(([id, kinship]) => ({ id, kinship })),
  };
}
