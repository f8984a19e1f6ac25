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
import {
  addShares,
  type Context,
  checkBackgrounds,
  checkDamsHaveMated,
  checkEffectiveMates,
  checkSum,
  lookUp,
  type Names,
  namesOf,
  type Place,
} from './input-checks.ts';
import type { MatingInput, PedigreeInput, Share } from './pedigree-input.ts';
import type { PedigreeProblem } from './problems.ts';
import { type ShareRows, type ShareRowsBuilder, shareRowsBuilder } from './share-rows.ts';

export interface Resolved {
  readonly backgroundKinship: Float64Array;
  /** Queen number of the mother of each single drone. */
  readonly droneMother: Int32Array;
  /** Background number of each founder; -1 for a queen with a dam. */
  readonly founderBackground: Int32Array;
  /**
   * Possible dams of queen i with their probabilities: row i. Items are mating numbers: queen q's own mating is
   * number q; after these come pairs of a dam and drones told by a daughter's `father`.
   */
  readonly dams: ShareRows;
  readonly queenOfMating: Int32Array;
  /** Drone source of each mating; -1 for a queen without one. */
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

interface Matings {
  readonly queenOfMating: Int32Array;
  /** What each mating is, and the record that tells it. */
  readonly matings: readonly (MatingInput | undefined)[];
  readonly toldBy: Int32Array;
}

/** Turns dams of queens with a known father into matings of their own; equal pairs share one. */
function pairFathers({ input: { queens } }: Context, dams: ShareRows): Matings {
  const queenOfMating = Array.from(queens.keys());
  const toldBy = Array.from(queens.keys());
  const matings = queens.map(({ mating }) => mating);
  const pairs = new Map<string, number>();
  for (let queen = 0; queen < queens.length; queen++) {
    const { father } = queens[queen]!;
    if (!father) continue;
    for (let k = dams.start[queen]!; k < dams.start[queen + 1]!; k++) {
      const key = `${dams.item[k]} ${JSON.stringify(father)}`;
      const known = pairs.get(key);
      if (known === undefined) {
        pairs.set(key, matings.length);
        queenOfMating.push(dams.item[k]!);
        toldBy.push(queen);
        matings.push(father);
      }
      dams.item[k] = known ?? matings.length - 1;
    }
  }
  return { queenOfMating: Int32Array.from(queenOfMating), matings, toldBy: Int32Array.from(toldBy) };
}

function resolveSources(
  context: Context,
  { matings, toldBy }: Matings,
): Pick<Resolved, 'sourceOf' | 'sources' | 'ofKnownDrones'> {
  const { pools, queens } = context.input;
  const rows = shareRowsBuilder(pools.length, queens.length);
  const ofKnownDrones: number[] = [];
  for (let index = 0; index < pools.length; index++) {
    const pool = pools[index]!;
    const place: Place = { list: 'pools', index, record: pool.id, field: 'droneMothers' };
    addMotherLists(context, place, pool, rows);
    ofKnownDrones[rows.close()] = 0;
  }
  const sourceOf = new Int32Array(matings.length).fill(-1);
  const seen = new Map<MatingInput, number>();
  const place = { list: 'queens' as const, index: 0, record: '', field: 'mating' };
  for (let number = 0; number < matings.length; number++) {
    const mating = matings[number];
    if (!mating) continue;
    const known = mating.kind === 'pool' ? undefined : seen.get(mating);
    if (known !== undefined) {
      sourceOf[number] = known;
      continue;
    }
    place.index = toldBy[number]!;
    place.record = queens[place.index]!.id;
    place.field = number < queens.length ? 'mating' : 'father';
    sourceOf[number] = sourceOfMating(context, place, mating, rows, ofKnownDrones);
    if (mating.kind !== 'pool') seen.set(mating, sourceOf[number]!);
  }
  return { sourceOf, sources: rows.finish(), ofKnownDrones: Uint8Array.from(ofKnownDrones) };
}

function resolveDams(context: Context): Pick<Resolved, 'dams' | 'founderBackground' | 'effectiveMates'> {
  const { queens } = context.input;
  const rows = shareRowsBuilder(queens.length, queens.length);
  const founderBackground = new Int32Array(queens.length).fill(-1);
  const effectiveMates = new Float64Array(queens.length);
  const asNumbers: Names = { ...context.queens, offset: 0 };
  // One place that moves along: a problem takes a copy, and a million queens make no garbage.
  const place = { list: 'queens' as const, index: 0, record: '', field: 'dams' };
  for (let index = 0; index < queens.length; index++) {
    const queen = queens[index]!;
    place.index = index;
    place.record = queen.id;
    place.field = queen.dams.length > 0 ? 'dams' : 'background';
    if (queen.dams.length > 0)
      checkSum(context, place, addShares(context, place, asNumbers, queen.dams, rows));
    else founderBackground[index] = lookUp(context, place, context.backgrounds, queen.background);
    rows.close();
    effectiveMates[index] = queen.effectiveMates;
    checkEffectiveMates(context, index, queen);
  }
  return { dams: rows.finish(), founderBackground, effectiveMates };
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
  const matings = pairFathers(context, damPart.dams);
  const sourcePart = resolveSources(context, matings);
  checkDamsHaveMated(context, damPart.dams, sourcePart.sourceOf);
  if (problems.length > 0) return { ok: false, problems };
  const queenIndex = context.queens.numbers;
  const offsets = { firstQueen, firstDrone, firstSource };
  return {
    ok: true,
    resolved: {
      backgroundKinship,
      droneMother,
      queenOfMating: matings.queenOfMating,
      ...damPart,
      ...sourcePart,
      queenIndex,
      ...offsets,
    },
  };
}
