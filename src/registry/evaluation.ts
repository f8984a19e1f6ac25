import type { MatingInput, PedigreeInput } from '../../graph/kinship/pedigree-input.ts';
import type { EvaluationInput } from '../../graph/merit/evaluate.ts';
import type { TraitObservation } from '../../graph/merit/observations.ts';
import { type PlainDay, yearOf } from '../journal/day.ts';
import type { QueenId, YardId } from '../journal/ids.ts';
import { founders } from './graph.ts';
import { traitObservations } from './observations.ts';
import { openedPedigreeInput } from './pedigree.ts';
import { type DronePool, dronePool, EFFECTIVE_MATES } from './pools.ts';
import { headOn, isAlive, layingQueens } from './queries.ts';
import type { Registry } from './state.ts';

/**
 * Everything that the numerics are told of a registry on a day, as plain data that can be sent to a worker: the
 * pedigree, the observations, who may be chosen, and which drones fly at each yard.
 */
export interface EvaluationWork {
  readonly pedigree: PedigreeInput;
  readonly observations: readonly TraitObservation[];
  /** Queens to be evaluated with their reliability. */
  readonly queens: readonly QueenId[];
  /** Laying queens alive on the day: those who can be chosen. */
  readonly candidates: readonly QueenId[];
  readonly lines: ReadonlyMap<QueenId, QueenId>;
  /** The drones of the season at each yard in use. */
  readonly yards: readonly YardDrones[];
  /** Effective mates of a daughter to come. */
  readonly effectiveMates: number;
  /** Assumed number of equally frequent sex alleles in every background. */
  readonly sexAlleles: number;
  /** Variances that the keeper took from their own records, instead of the published ones. */
  readonly variances: NonNullable<EvaluationInput['variances']>;
}

/** What the records do not tell and the keeper may say. */
export interface Assumptions {
  readonly sexAlleles: number;
  readonly effectiveMates?: number;
  readonly variances?: EvaluationWork['variances'];
}

export interface YardDrones {
  readonly yard: YardId;
  readonly pool: DronePool;
  readonly at: MatingInput;
}

/** Above this many queens, reliabilities are worked out for the living and their dams only. */
const ALL_QUEENS = 600;

/** All that the numerics need to evaluate these records on that day: plain data, fit to be sent to a worker. */
export function evaluationWork(
  registry: Registry,
  on: PlainDay,
  { sexAlleles, effectiveMates = EFFECTIVE_MATES, variances = {} }: Assumptions,
): EvaluationWork {
  const candidates = layingQueens(registry, on).map(({ id }) => id);
  const living = new Set(candidates);
  for (const id of candidates) {
    for (const dam of registry.queens.get(id)?.parentage?.dams ?? []) living.add(dam.queen);
  }
  const all = registry.queens.size <= ALL_QUEENS;
  return {
    pedigree: openedPedigreeInput(registry).input,
    observations: traitObservations(registry),
    queens: all ? [...registry.queens.keys()] : [...living].filter((id) => registry.queens.has(id)),
    candidates,
    lines: founders(registry),
    yards: yardsInUse(registry, on).map((yard) => yardDrones(registry, yard, yearOf(on))),
    effectiveMates,
    sexAlleles,
    variances,
  };
}

function yardsInUse(registry: Registry, on: PlainDay): readonly YardId[] {
  const yards = new Set<YardId>();
  for (const colony of registry.colonies.values()) {
    const stay = isAlive(colony, on) && headOn(registry, colony, on) ? colony.stays.at(-1) : undefined;
    if (stay) yards.add(stay.yard);
  }
  return [...yards].sort();
}

/** The drones of a yard and season as a mating: named mothers and the background, whether a queen met them yet or not. */
function yardDrones(registry: Registry, yard: YardId, season: number): YardDrones {
  const pool = dronePool(registry, yard, season);
  const droneMothers = pool.droneMothers.map(({ queen, share }) => ({ of: queen, share }));
  const own = droneMothers.reduce((sum, { share }) => sum + share, 0);
  const backgrounds = own < 1 - 1e-9 ? [{ of: pool.background, share: 1 - own }] : [];
  return { yard, pool, at: { kind: 'drone-mothers', droneMothers, backgrounds } };
}
