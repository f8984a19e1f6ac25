/** What can be wrong with the facts of a pedigree, told so that the place in the keeper's data can be found. */

export type PedigreeProblemCode =
  | 'unknown-id'
  | 'doubled-id'
  | 'doubled-share'
  | 'share-range'
  | 'share-sum'
  | 'effective-mates'
  | 'background-kinship'
  | 'dam-without-mating'
  | 'cycle';

/** The lists of `PedigreeInput`. */
export type PedigreeList = 'backgrounds' | 'pools' | 'drones' | 'queens';

export interface PedigreeProblem {
  readonly code: PedigreeProblemCode;
  /** The list of the input, and the place in that list, where the problem stands. */
  readonly list: PedigreeList;
  readonly index: number;
  /** Id of that record. */
  readonly record: string;
  /** Its field: id, kinship, mother, dams, background, mating, father, effectiveMates, droneMothers, backgrounds. */
  readonly field: string;
  readonly found: string;
  readonly because: string;
  readonly remedy: string;
}

const RECORD_NAMES: Readonly<Record<PedigreeList, string>> = {
  backgrounds: 'Background',
  pools: 'Drone pool',
  drones: 'Drone',
  queens: 'Queen',
};

/** One sentence or two for a keeper: where, what was found, why it cannot be, what to do. */
export function pedigreeProblemText(problem: PedigreeProblem): string {
  const where = `${RECORD_NAMES[problem.list]} '${problem.record}', ${problem.field}`;
  return `${where}: found ${problem.found}. ${problem.because} ${problem.remedy}`;
}
