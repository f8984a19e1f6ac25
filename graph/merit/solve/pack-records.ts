/**
 * From records with ids to the arrays that the solver reads.
 *
 * Cost: O(records). Unknowns: a record of a queen who is not in the pedigree is refused with a sentence, never
 * dropped in silence.
 */
import type { Pedigree } from '../../kinship/pedigree.ts';
import type { ColonyRecords } from './colony-model.ts';
import type { MeritProblem } from './problems.ts';

/** One record of a colony: of the queen whose workers made it, in a comparison group. */
export interface MeritRecord {
  readonly queen: string;
  readonly group: string;
  readonly value: number;
  /** Known sampling variance in the squared unit of the value; 0 where none is known. */
  readonly samplingVariance: number;
}

export interface PackedRecords {
  readonly records: ColonyRecords;
  /** Name of each group number, in order of first appearance. */
  readonly groupNames: readonly string[];
  readonly problems: readonly MeritProblem[];
}

/**
 * Records in flat arrays, comparison groups numbered as they first appear. A queen who is not in the pedigree is a
 * problem.
 */
export function packRecords(pedigree: Pedigree, rows: readonly MeritRecord[]): PackedRecords {
  const numberOf = new Map<string, number>();
  const queen = new Int32Array(rows.length);
  const group = new Int32Array(rows.length);
  const value = new Float64Array(rows.length);
  const samplingVariance = new Float64Array(rows.length);
  const problems: MeritProblem[] = [];
  let at = 0;
  rows.forEach((row, index) => {
    const q = pedigree.queenIndex.get(row.queen);
    if (q === undefined) {
      problems.push({
        code: 'unknown-queen',
        queen: row.queen,
        record: index,
        sentence: `Record ${index + 1} is of queen '${row.queen}', who is not in the pedigree. Add her or correct it.`,
      });
      return;
    }
    const known = numberOf.get(row.group);
    if (known === undefined) numberOf.set(row.group, numberOf.size);
    queen[at] = q;
    group[at] = known ?? numberOf.size - 1;
    value[at] = row.value;
    samplingVariance[at++] = row.samplingVariance;
  });
  const records = {
    queen: queen.subarray(0, at),
    group: group.subarray(0, at),
    groups: numberOf.size,
    value: value.subarray(0, at),
    samplingVariance: samplingVariance.subarray(0, at),
  };
  return { records, groupNames: [...numberOf.keys()], problems };
}
