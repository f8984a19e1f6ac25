import { ASSUMPTIONS } from '../../graph/increase/assumptions.ts';
import { type FrameSize, sideDm2 } from '../../graph/increase/comb.ts';
import { WEAKNESS_DEFAULTS } from '../../graph/increase/weakness.ts';
import { type TraitWeights, weightedIndex } from '../../graph/merit/index-of-traits.ts';
import { daysBetween, firstDay, isExactDay, type PlainDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { byLabel, headOn, isLiving } from '../../src/registry/queries.ts';
import type { Colony, Queen, Registry } from '../../src/registry/state.ts';
import { wintersHeaded } from '../../src/registry/winters-of-queen.ts';
import { showsSwarmSigns } from '../../src/registry/year-state.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import { lastStrength, type Strength } from '../parts/colony-facts.ts';

/**
 * Which colony to split first. Swarm signs put a colony first, since what is not split will leave; then come those
 * headed by a queen who came through a winter, the strongest first.
 */
export interface SplitCandidate {
  readonly colony: Colony;
  readonly head: Queen;
  /** The day cells or other swarm signs were last seen there; absent without any since. */
  readonly signs?: PlainDay;
  readonly strength?: Strength;
  readonly winters: number;
  /** Place by the keeper's weights, where it is worked out. */
  readonly place?: Place;
  /** Fewer bees than two parts are asked to have. */
  readonly small: boolean;
}

export interface Place {
  readonly place: number;
  readonly of: number;
}

/** Signs older than this have led to a swarm or to nothing. */
const SIGNS_DAYS = 14;

/** Living colonies with a laying queen, in the order in which to think of them; ties by label. */
export function splitFirst(
  registry: Registry,
  on: PlainDay,
  { places, size }: { readonly places: ReadonlyMap<QueenId, Place>; readonly size: FrameSize | undefined },
): readonly SplitCandidate[] {
  return [...registry.colonies.values()]
    .filter((colony) => isLiving(colony, on))
    .flatMap((colony) => {
      const head = headOn(registry, colony, on);
      return head ? [candidate(colony, head, on, places.get(head.id), size)] : [];
    })
    .sort(
      (a, b) =>
        Number(b.signs !== undefined) - Number(a.signs !== undefined) ||
        Number(a.small) - Number(b.small) ||
        Number(b.winters > 0) - Number(a.winters > 0) ||
        (b.strength?.frames ?? 0) - (a.strength?.frames ?? 0) ||
        byLabel(a.colony, b.colony),
    );
}

function candidate(
  colony: Colony,
  head: Queen,
  on: PlainDay,
  place: Place | undefined,
  size: FrameSize | undefined,
): SplitCandidate {
  const signs = swarmSigns(colony, on);
  const strength = lastStrength(colony, on);
  return {
    colony,
    head,
    winters: wintersHeaded(head, on),
    small: strength !== undefined && size !== undefined && strength.frames < framesForTwo(size),
    ...(signs ? { signs } : {}),
    ...(strength ? { strength } : {}),
    ...(place ? { place } : {}),
  };
}

/** The last day on which swarm signs were seen and neither a split nor a look without any has followed. */
export function swarmSigns(colony: Colony, on: PlainDay): PlainDay | undefined {
  for (const entry of colony.entries.toReversed()) {
    if (!isExactDay(entry.day) || firstDay(entry.day) > on) continue;
    const tells = tellsOfSwarming(entry);
    if (tells === undefined) continue;
    const day = firstDay(entry.day);
    return tells && daysBetween(day, on) <= SIGNS_DAYS ? day : undefined;
  }
  return undefined;
}

/** Whether an entry shows signs (true), shows none or ends them (false), or says nothing of swarming. */
function tellsOfSwarming(entry: Entry): boolean | undefined {
  if (entry.kind === 'split') return false;
  if (entry.kind === 'queen-expected') return entry.reason === 'swarm' ? true : undefined;
  if (entry.kind !== 'inspection') return undefined;
  const looked =
    entry.openCells !== undefined || entry.cappedCells !== undefined || entry.swarmTendency !== undefined;
  return looked ? showsSwarmSigns(entry) : undefined;
}

/** Frames of bees that a part with the old queen and one that raises another need together, by the planner's limits. */
export function framesForTwo(size: FrameSize): number {
  const full = size.fullBees ?? 2 * sideDm2(size) * ASSUMPTIONS.beesPerDm2.likely;
  return (WEAKNESS_DEFAULTS.beesToRaise + WEAKNESS_DEFAULTS.beesWithQueen) / full;
}

/** The place of each laying queen by the keeper's weights. */
export function placesOf({ answer }: Evaluated, weights: TraitWeights): ReadonlyMap<QueenId, Place> {
  const { evaluation, diagonal, candidates } = answer;
  const values = weightedIndex(evaluation.traits, weights, diagonal);
  const living = new Set(candidates);
  const ranked = evaluation.queens
    .map((queen, at) => ({ queen, index: values[at]?.index ?? 0 }))
    .filter(({ queen }) => living.has(queen))
    .sort((a, b) => b.index - a.index || (a.queen < b.queen ? -1 : 1));
  return new Map(ranked.map(({ queen }, at) => [queen as QueenId, { place: at + 1, of: ranked.length }]));
}

/** Colonies that are left alone for now: nobody is known to lay there. */
export function notNow(registry: Registry, on: PlainDay): readonly Colony[] {
  return [...registry.colonies.values()]
    .filter((colony) => isLiving(colony, on) && headOn(registry, colony, on) === undefined)
    .sort(byLabel);
}
