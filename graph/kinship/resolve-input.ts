/**
 * Checks the facts of a pedigree and replaces every id by a number. Everything but loops of descent is found
 * here; loops are found when the nodes are put in birth order (birth-order.ts).
 *
 * One number space for all that has parents or is a parent, called entities here:
 *   backgrounds, then queens, then single drones, then drone sources.
 * A drone source is a distinct answer to "whose sons did she meet": a named pool, or a list of shares that
 * one or many queens have in common. Equal lists are found by value and kept once.
 * Cost: O(records + shares). Unknowns: a queen without `mating` has no source; that is a problem only if she
 * is a dam.
 */
import type { MatingInput, PedigreeInput, QueenInput, Share } from './pedigree-input.ts';
import type { PedigreeList, PedigreeProblem, PedigreeProblemCode } from './problems.ts';
import { type ShareRows, type ShareRowsBuilder, shareRowsBuilder } from './share-rows.ts';

/** Shares must sum to 1 within this: it forgives the last digits of a binary fraction, not a slip of the pen. */
export const SHARE_SUM_TOLERANCE = 1e-9;

export interface Resolved {
  readonly backgroundKinship: Float64Array;
  /** Queen number of the mother of each single drone. */
  readonly droneMother: Int32Array;
  /** Background number of each founder; -1 for a queen with a dam. */
  readonly founderBackground: Int32Array;
  /** Possible dams (queen numbers) of queen i with their probabilities: row i. */
  readonly dams: ShareRows;
  /** Drone source of each queen; -1 without a mating. */
  readonly sourceOf: Int32Array;
  readonly effectiveMates: Float64Array;
  /** Entities and shares of each source: row s. Named pools come first, in input order. */
  readonly sources: ShareRows;
  /** 1 where a source is a list of single known drones: its shares say all, the number of mates nothing. */
  readonly ofKnownDrones: Uint8Array;
  readonly queenIndex: ReadonlyMap<string, number>;
  readonly firstQueen: number;
  readonly firstDrone: number;
  readonly firstSource: number;
}

interface Names {
  readonly noun: string;
  readonly numbers: ReadonlyMap<string, number>;
  /** Added to a number to make it an entity. */
  readonly offset: number;
}

interface Place {
  readonly list: PedigreeList;
  readonly index: number;
  readonly record: string;
  readonly field: string;
}

interface Context {
  readonly input: PedigreeInput;
  readonly problems: PedigreeProblem[];
  readonly backgrounds: Names;
  readonly queens: Names;
  readonly drones: Names;
  readonly pools: Names;
}

function report(
  problems: PedigreeProblem[],
  place: Place,
  code: PedigreeProblemCode,
  [found, because, remedy]: readonly [string, string, string],
): void {
  problems.push({ ...place, code, found, because, remedy });
}

function namesOf(
  problems: PedigreeProblem[],
  list: PedigreeList,
  noun: string,
  records: readonly { readonly id: string }[],
  offset: number,
): Names {
  const numbers = new Map<string, number>();
  let doubled = 0;
  for (let index = 0; index < records.length; index++) {
    const { id } = records[index]!;
    numbers.set(id, index);
    if (numbers.size <= index - doubled) {
      doubled++;
      report(problems, { list, index, record: id, field: 'id' }, 'doubled-id', [
        `'${id}' a second time`,
        `Each ${noun} has an id of its own.`,
        'Give one of the two another id, or remove the doubled record.',
      ]);
    }
  }
  return { noun, numbers, offset };
}

/** The number of an id, or -1 with a problem. */
function lookUp(context: Context, place: Place, names: Names, id: string): number {
  const number = names.numbers.get(id);
  if (number !== undefined) return number;
  report(context.problems, place, 'unknown-id', [
    `'${id}'`,
    `No ${names.noun} has that id.`,
    `Add that ${names.noun}, or correct the id.`,
  ]);
  return -1;
}

/** Adds a list of shares to the open row and returns their sum. */
function addShares(
  context: Context,
  place: Place,
  names: Names,
  shares: readonly Share[],
  rows: ShareRowsBuilder,
): number {
  let sum = 0;
  for (let k = 0; k < shares.length; k++) {
    const { of, share } = shares[k]!;
    const number = lookUp(context, place, names, of);
    rows.add(names.offset + number, share);
    sum += share;
    if (!(share > 0 && share <= 1)) {
      report(context.problems, place, 'share-range', [
        `the share ${share} for '${of}'`,
        'A share is more than 0 and at most 1.',
        'Correct the share, or leave that name out.',
      ]);
    }
  }
  reportDoubledNames(context, place, shares);
  return sum;
}

function reportDoubledNames(context: Context, place: Place, shares: readonly Share[]): void {
  if (shares.length < 2) return;
  if (shares.length === 2 && shares[0]!.of !== shares[1]!.of) return;
  const seen = new Set<string>();
  for (const { of } of shares) {
    if (seen.has(of)) {
      report(context.problems, place, 'doubled-share', [
        `'${of}' twice in one list`,
        'A name stands once in a list of shares.',
        'Add its shares together.',
      ]);
    }
    seen.add(of);
  }
}

function checkSum(context: Context, place: Place, sum: number): void {
  if (Math.abs(sum - 1) <= SHARE_SUM_TOLERANCE) return;
  report(context.problems, place, 'share-sum', [
    `shares that sum to ${Number(sum.toPrecision(12))}`,
    'Shares of one list sum to 1.',
    'Correct the shares, or give the rest to a background.',
  ]);
}

type MotherLists = { readonly droneMothers: readonly Share[]; readonly backgrounds: readonly Share[] };

function addMotherLists(context: Context, place: Place, lists: MotherLists, rows: ShareRowsBuilder): void {
  const mothers = addShares(context, place, context.queens, lists.droneMothers, rows);
  const placeOfBackgrounds = place.list === 'pools' ? { ...place, field: 'backgrounds' } : place;
  const backgrounds = addShares(context, placeOfBackgrounds, context.backgrounds, lists.backgrounds, rows);
  checkSum(context, place, mothers + backgrounds);
}

const MOTHERS_TAG = 1;
const DRONES_TAG = 2;

/** The source of one mating; lists equal to an earlier one share its number. */
function sourceOfMating(
  context: Context,
  place: Place,
  mating: MatingInput,
  rows: ShareRowsBuilder,
  ofKnownDrones: number[],
): number {
  if (mating.kind === 'pool') return lookUp(context, place, context.pools, mating.pool);
  const isDrones = mating.kind === 'drones';
  if (isDrones) {
    checkSum(context, place, addShares(context, place, context.drones, mating.drones, rows));
  } else addMotherLists(context, place, mating, rows);
  const source = rows.closeShared(isDrones ? DRONES_TAG : MOTHERS_TAG);
  ofKnownDrones[source] = isDrones ? 1 : 0;
  return source;
}

function checkBackgrounds({ input, problems }: Context): Float64Array {
  return Float64Array.from(input.backgrounds, ({ id, kinship }, index) => {
    if (!(kinship >= 0 && kinship <= 1)) {
      report(problems, { list: 'backgrounds', index, record: id, field: 'kinship' }, 'background-kinship', [
        String(kinship),
        'The kinship within a background lies between 0 and 1.',
        'Use 0 for a population of unrelated bees, a few hundredths for a closed one.',
      ]);
    }
    return kinship;
  });
}

function resolveSources(context: Context): Pick<Resolved, 'sourceOf' | 'sources' | 'ofKnownDrones'> {
  const { pools, queens } = context.input;
  const rows = shareRowsBuilder(pools.length, queens.length);
  const ofKnownDrones: number[] = [];
  for (let index = 0; index < pools.length; index++) {
    const pool = pools[index]!;
    const place: Place = { list: 'pools', index, record: pool.id, field: 'droneMothers' };
    addMotherLists(context, place, pool, rows);
    ofKnownDrones[rows.close()] = 0;
  }
  const sourceOf = new Int32Array(queens.length).fill(-1);
  const seen = new Map<MatingInput, number>();
  for (let index = 0; index < queens.length; index++) {
    const { id, mating } = queens[index]!;
    if (!mating) continue;
    const known = mating.kind === 'pool' ? undefined : seen.get(mating);
    if (known !== undefined) {
      sourceOf[index] = known;
      continue;
    }
    const place: Place = { list: 'queens', index, record: id, field: 'mating' };
    sourceOf[index] = sourceOfMating(context, place, mating, rows, ofKnownDrones);
    if (mating.kind !== 'pool') seen.set(mating, sourceOf[index]!);
  }
  return { sourceOf, sources: rows.finish(), ofKnownDrones: Uint8Array.from(ofKnownDrones) };
}

function checkEffectiveMates(context: Context, index: number, queen: QueenInput): void {
  if (queen.effectiveMates >= 1) return;
  const place: Place = { list: 'queens', index, record: queen.id, field: 'effectiveMates' };
  report(context.problems, place, 'effective-mates', [
    String(queen.effectiveMates),
    'The effective number of mates is at least 1.',
    'About 12 is usual under open mating; 1 is a single drone.',
  ]);
}

function resolveDams(context: Context): Pick<Resolved, 'dams' | 'founderBackground' | 'effectiveMates'> {
  const { queens } = context.input;
  const rows = shareRowsBuilder(queens.length, queens.length);
  const founderBackground = new Int32Array(queens.length).fill(-1);
  const effectiveMates = new Float64Array(queens.length);
  const asNumbers: Names = { ...context.queens, offset: 0 };
  for (let index = 0; index < queens.length; index++) {
    const queen = queens[index]!;
    const place: Place = { list: 'queens', index, record: queen.id, field: 'dams' };
    if (queen.dams.length > 0)
      checkSum(context, place, addShares(context, place, asNumbers, queen.dams, rows));
    else {
      founderBackground[index] = lookUp(
        context,
        { ...place, field: 'background' },
        context.backgrounds,
        queen.background,
      );
    }
    rows.close();
    effectiveMates[index] = queen.effectiveMates;
    checkEffectiveMates(context, index, queen);
  }
  return { dams: rows.finish(), founderBackground, effectiveMates };
}

/** A daughter needs the drones her dam met; a dam without them is told once, at the dam. */
function checkDamsHaveMated(context: Context, dams: ShareRows, sourceOf: Int32Array): void {
  const { queens } = context.input;
  const told = new Set<number>();
  for (let index = 0; index < queens.length; index++) {
    for (let k = dams.start[index]!; k < dams.start[index + 1]!; k++) {
      const dam = dams.item[k]!;
      if (dam < 0 || sourceOf[dam]! >= 0 || queens[dam]!.mating || told.has(dam)) continue;
      told.add(dam);
      const place: Place = { list: 'queens', index: dam, record: queens[dam]!.id, field: 'mating' };
      report(context.problems, place, 'dam-without-mating', [
        `nothing, though she is a dam of '${queens[index]!.id}'`,
        'A daughter comes from the drones her dam met.',
        'Name a pool, drone mothers, or a background for her mating.',
      ]);
    }
  }
}

function resolveDroneMothers(context: Context): Int32Array {
  return Int32Array.from(context.input.drones, ({ id, mother }, index) =>
    lookUp(context, { list: 'drones', index, record: id, field: 'mother' }, context.queens, mother),
  );
}

/** All problems at once, or the numbers. */
export function resolveInput(
  input: PedigreeInput,
):
  | { readonly ok: true; readonly resolved: Resolved }
  | { readonly ok: false; readonly problems: PedigreeProblem[] } {
  const problems: PedigreeProblem[] = [];
  const firstQueen = input.backgrounds.length;
  const firstDrone = firstQueen + input.queens.length;
  const firstSource = firstDrone + input.drones.length;
  const context: Context = {
    input,
    problems,
    backgrounds: namesOf(problems, 'backgrounds', 'background', input.backgrounds, 0),
    queens: namesOf(problems, 'queens', 'queen', input.queens, firstQueen),
    drones: namesOf(problems, 'drones', 'drone', input.drones, firstDrone),
    pools: namesOf(problems, 'pools', 'drone pool', input.pools, 0),
  };
  const backgroundKinship = checkBackgrounds(context);
  const droneMother = resolveDroneMothers(context);
  const damPart = resolveDams(context);
  const sourcePart = resolveSources(context);
  checkDamsHaveMated(context, damPart.dams, sourcePart.sourceOf);
  if (problems.length > 0) return { ok: false, problems };
  const queenIndex = context.queens.numbers;
  const offsets = { firstQueen, firstDrone, firstSource };
  return {
    ok: true,
    resolved: { backgroundKinship, droneMother, ...damPart, ...sourcePart, queenIndex, ...offsets },
  };
}
