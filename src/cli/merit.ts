/** `merit`: breeding values of queens from records of their colonies. */
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import type { ColonyRecords, ColonyVariances } from '../../graph/merit/solve/colony-model.ts';
import { solveMerit } from '../../graph/merit/solve/merit.ts';
import { reliabilities } from '../../graph/merit/solve/reliability.ts';
import { type Arguments, type Command, type Option, OUT_OPTION } from './command.ts';
import { csvField, csvNumber, csvWriter } from './csv-write.ts';
import { PEDIGREE_NOTES, PEDIGREE_OPTIONS, readPedigree } from './pedigree-table.ts';
import { readQueenList } from './queen-list.ts';
import { readRecords } from './records-table.ts';
import { numberIn } from './table.ts';

/**
 * Relative residuals of the solves, so that the digits printed are digits of the solution. The error of a reliability is
 * of second order in its residual.
 */
const TOLERANCE = { tolerance: 1e-12, reliabilityTolerance: 1e-8 };

/** Queens up to whom every reliability is printed unasked; beyond, each costs a solve and must be asked for. */
const RELIABILITY_UNASKED = 1000;

const variance = (name: string, help: string): Option => ({ name, value: 'V', help, isRequired: true });

const VARIANCE_OPTIONS: readonly Option[] = [
  variance('worker-variance', 'Variance of the worker effect, in the squared unit of the value.'),
  variance('queen-variance', 'Variance of the queen effect.'),
  variance('covariance', 'Covariance of worker and queen effect of one queen; usually negative.'),
  variance('permanent-variance', 'Variance of the effect that the records of one colony share; 0 for none.'),
  variance('residual-variance', 'Residual variance of a record, to which its sampling_variance is added.'),
];

function readVariances({ options }: Arguments): { variances: ColonyVariances; problems: string[] } {
  const problems: string[] = [];
  const read = (name: string): number => {
    const text = options.get(name) ?? '';
    const value = numberIn(text);
    if (value === undefined) problems.push(`--${name}: '${text}' is no number.`);
    return value ?? 0;
  };
  const variances = {
    worker: read('worker-variance'),
    queen: read('queen-variance'),
    covariance: read('covariance'),
    permanent: read('permanent-variance'),
    residual: read('residual-variance'),
  };
  return { variances, problems };
}

function queensWithReliability(pedigree: Pedigree, text: string | undefined) {
  const wanted = text ?? (pedigree.queenIds.length <= RELIABILITY_UNASKED ? 'all' : 'none');
  if (wanted === 'none') return { ok: true, queens: new Int32Array(0) } as const;
  return readQueenList(pedigree, 'reliability', wanted);
}

type Values =
  | {
      readonly ok: true;
      readonly worker: Float64Array;
      readonly queen: Float64Array;
      readonly breedingValue: Float64Array;
      readonly reliability: ReadonlyMap<number, number>;
    }
  | { readonly ok: false; readonly problems: readonly string[] };

function evaluate(
  pedigree: Pedigree,
  records: ColonyRecords,
  variances: ColonyVariances,
  candidates: Int32Array,
): Values {
  const solved = solveMerit(pedigree, records, variances, TOLERANCE);
  if (solved.is === 'refused')
    return { ok: false, problems: solved.problems.map(({ sentence }) => sentence) };
  if (solved.is !== 'solved')
    return { ok: false, problems: ['The breeding values did not settle. Look at the variances given.'] };
  const reliability = new Map<number, number>();
  if (candidates.length > 0) {
    const found = reliabilities(pedigree, records, variances, candidates, TOLERANCE);
    if (found.is !== 'solved')
      return { ok: false, problems: ['The reliabilities did not settle. Look at the variances given.'] };
    for (const [k, queen] of candidates.entries()) reliability.set(queen, found.reliability[k] ?? 0);
  }
  return {
    ok: true,
    worker: solved.worker,
    queen: solved.queen,
    breedingValue: solved.breedingValue,
    reliability,
  };
}

export const meritCommand: Command = {
  name: 'merit',
  files: ['PEDIGREE.csv', 'RECORDS.csv'],
  options: [
    ...VARIANCE_OPTIONS,
    ...PEDIGREE_OPTIONS,
    {
      name: 'reliability',
      value: 'all|none|ID,...',
      help: `Queens whose reliability is computed. Without this option: all in a table of up to ${RELIABILITY_UNASKED} queens, none in a larger one.`,
    },
    OUT_OPTION,
  ],
  notes: [
    ...PEDIGREE_NOTES,
    'RECORDS.csv has the columns queen,group,value,sampling_variance: the queen whose workers made the record, its ' +
      'comparison group (a fixed effect), the value, and the known sampling variance of the value, added to the residual ' +
      'variance of that record (empty: nothing to add).',
    'Prints queen,worker_effect,queen_effect,breeding_value,reliability, queens in the order of the table. Breeding ' +
      'value is worker effect plus queen effect, as a deviation; reliability is empty where it was not asked for.',
  ],
  async run(given, world) {
    const { variances, problems } = readVariances(given);
    const read = readPedigree(world, given.positions[0] ?? '', given);
    if (!read.ok || problems.length > 0)
      return { ok: false, problems: [...problems, ...(read.ok ? [] : read.problems)] };
    const { pedigree } = read;
    const table = readRecords(world, given.positions[1] ?? '', pedigree);
    const list = queensWithReliability(pedigree, given.options.get('reliability'));
    if (!table.ok) return { ok: false, problems: [...table.problems, ...(list.ok ? [] : list.problems)] };
    if (!list.ok) return list;
    const values = evaluate(pedigree, table.records, variances, list.queens);
    if (!values.ok) return values;
    const columns = ['queen', 'worker_effect', 'queen_effect', 'breeding_value', 'reliability'];
    const out = csvWriter(world.openOutput(given.options.get('out')), columns);
    for (let queen = 0; queen < pedigree.queenIds.length; queen++) {
      const numbers = [
        values.worker[queen],
        values.queen[queen],
        values.breedingValue[queen],
        values.reliability.get(queen),
      ];
      const full = out.line(
        `${csvField(pedigree.queenIds[queen] ?? '')},${numbers.map(csvNumber).join(',')}`,
      );
      if (full) await full;
    }
    await out.close();
    return { ok: true };
  },
};
