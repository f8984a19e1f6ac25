/**
 * Checks of single facts of a pedigree: ids, shares, kinship of backgrounds, numbers of mates. Each problem is
 * added to the context's list; nothing stops at the first. Cost: O(1) a fact.
 */
import type { PedigreeInput, QueenInput, Share } from './pedigree-input.ts';
import type { PedigreeList, PedigreeProblem, PedigreeProblemCode } from './problems.ts';
import type { ShareRows, ShareRowsBuilder } from './share-rows.ts';

/** Shares must sum to 1 within this: it forgives the last digits of a binary fraction, not a slip of the pen. */
const SHARE_SUM_TOLERANCE = 1e-9;

export interface Names {
  readonly noun: string;
  readonly numbers: ReadonlyMap<string, number>;
  /** Added to a number to make it an entity. */
  readonly offset: number;
}

export interface Place {
  readonly list: PedigreeList;
  readonly index: number;
  readonly record: string;
  readonly field: string;
}

export interface Context {
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

/** Where to look up the ids of one list, whose entities are numbered from `offset` on. An id given twice is reported. */
export function namesOf(
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
  /** What refers to a doubled id is checked against the first record of that id. */
  if (doubled > 0)
    for (let index = records.length - 1; index >= 0; index--) numbers.set(records[index]!.id, index);
  return { noun, numbers, offset };
}

/** The number of an id, or -1 with a problem. */
export function lookUp(context: Context, place: Place, names: Names, id: string): number {
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
export function addShares(
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

/** Reports shares of one list that do not sum to 1. */
export function checkSum(context: Context, place: Place, sum: number): void {
  if (Math.abs(sum - 1) <= SHARE_SUM_TOLERANCE) return;
  report(context.problems, place, 'share-sum', [
    `shares that sum to ${Number(sum.toPrecision(12))}`,
    'Shares of one list sum to 1.',
    'Correct the shares, or give the rest to a background.',
  ]);
}

/** Kinship (0..1) within each background; one outside that range is reported. */
export function checkBackgrounds({ input, problems }: Context): Float64Array {
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

/** Reports an effective number of mates below 1, or one that is no number. */
export function checkEffectiveMates(context: Context, index: number, queen: QueenInput): void {
  if (queen.effectiveMates >= 1) return;
  const place: Place = { list: 'queens', index, record: queen.id, field: 'effectiveMates' };
  report(context.problems, place, 'effective-mates', [
    String(queen.effectiveMates),
    'The effective number of mates is at least 1.',
    'About 12 is usual under open mating; 1 is a single drone.',
  ]);
}

/** A daughter needs the drones her dam met; a dam without them is told once, at the dam. */
export function checkDamsHaveMated(context: Context, dams: ShareRows, sourceOf: Int32Array): void {
  const { queens } = context.input;
  const told = new Set<number>();
  for (let index = 0; index < queens.length; index++) {
    for (let k = dams.start[index]!; k < dams.start[index + 1]!; k++) {
      const dam = dams.item[k]!;
      if (dam < 0 || dam >= queens.length || sourceOf[dam]! >= 0 || queens[dam]!.mating || told.has(dam))
        continue;
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
