import type { QueenGroup, RetainedAlleles } from '../../graph/alleles/retained.ts';
import { pushTo } from '../../graph/grouping.ts';
import { winterYears } from '../../src/journal/day-words.ts';
import { wintersEntered } from '../../src/registry/winters-of-queen.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import type { GenesKept, GenesKeptWork } from '../../src/store/index.ts';
import { count } from '../parts/words.ts';

/** What the queens of each winter carried, and those of now: so that a loss of genes is seen as it comes. */

const NOW = 'now';
/** Winters shown, counted back from the last. */
const MOST_WINTERS = 6;

/** The question put to the numerics: the queens who went into each winter, then the laying queens of now. */
export function genesKeptWork({ registry, on, work, answer }: Evaluated): GenesKeptWork {
  const springs = new Map<number, string[]>();
  for (const queen of registry.queens.values()) {
    for (const spring of wintersEntered(queen, on)) pushTo(springs, spring, queen.id);
  }
  const winters = [...springs]
    .sort((a, b) => a[0] - b[0])
    .slice(-MOST_WINTERS)
    .map(([spring, queens]): QueenGroup => ({ name: winterYears(spring), queens }));
  const groups = [...winters, { name: NOW, queens: answer.candidates }];
  return { pedigree: work.pedigree, sexAlleles: work.sexAlleles, groups };
}

export interface GenesRow {
  readonly when: string;
  readonly queens: number;
  /** Different sex alleles, and different genes of founders at any one place, among the two of each queen. */
  readonly sex: string;
  readonly founders: string;
}

export function genesRows(
  { groups }: Pick<GenesKeptWork, 'groups'>,
  { sex, founders }: GenesKept,
): readonly GenesRow[] {
  return groups.flatMap(({ name, queens }, at) => {
    const [own, all] = [sex[at], founders[at]];
    return own && all
      ? [{ when: name, queens: queens.length, sex: bandText(own), founders: bandText(all) }]
      : [];
  });
}

/** "12 (10 to 14)": the middle history, and what nine in ten lie between; one figure where they agree. */
function bandText({ median, low, high }: RetainedAlleles): string {
  const [middle, least, most] = [median, low, high].map(Math.round);
  return least === most ? String(middle) : `${middle} (${least}\u00a0to\u00a0${most})`;
}

/** What the last row says. */
export function genesLead(rows: readonly GenesRow[]): string {
  const now = rows.at(-1);
  if (!now) return '';
  return `The ${count(now.queens, 'queen')} who lay now carry ${now.sex} different sex alleles and ${now.founders} different genes of founders at any other place, of ${2 * now.queens} at most.`;
}
