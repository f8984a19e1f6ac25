/**
 * Invented registries of any size for the benches: twelve seasons; each queen has a dam of the last three
 * seasons and flew at a yard of her own season, among the sons of drone mothers of the last three seasons and one
 * part in ten of unrecorded bees. 250 yards and seasons of 50 drone mothers at 100,000 queens, in proportion elsewhere.
 */
import type {
  DronePoolInput,
  MatingInput,
  PedigreeInput,
  QueenInput,
  Share,
} from '../../graph/kinship/pedigree-input.ts';
import { type Random, randomGenerator } from '../../graph/numerics/random.ts';

/**
 * What the queens of one yard and season met.
 *   pool: all of them the same pool.
 *   neighbours: each a list of drone mothers of her own, out of those that fly around that yard.
 *   strangers: each a list of her own out of all queens of three seasons; no registry is like this, and nothing is
 *   harder.
 */
export type Meeting = 'pool' | 'neighbours' | 'strangers';

export interface RegistryShape {
  readonly queens: number;
  readonly seasons: number;
  /** Yards and seasons. */
  readonly yards: number;
  readonly meeting: Meeting;
  /** Drone mothers of a pool, or of a list. */
  readonly droneMothers: number;
  /** Drone mothers around a yard, from which 'neighbours' are taken. */
  readonly around: number;
  /** Share of the queens of a season from whom daughters are raised. */
  readonly breeders: number;
}

export const REGISTRY_DEFAULTS = {
  seasons: 12,
  meeting: 'pool',
  droneMothers: 50,
  around: 100,
  breeders: 0.1,
} as const satisfies Partial<RegistryShape>;

export function registryShape(queens: number, options: Partial<RegistryShape> = {}): RegistryShape {
  return { queens, yards: Math.max(12, Math.round(queens / 400)), ...REGISTRY_DEFAULTS, ...options };
}

const BACKGROUND_SHARE = 0.1;
const backgrounds: readonly Share[] = [{ of: 'local', share: BACKGROUND_SHARE }];

/** Some different numbers of first .. end - 1. */
function drawn(random: Random, first: number, end: number, count: number): number[] {
  const chosen = new Set<number>();
  const wanted = Math.min(count, end - first);
  while (chosen.size < wanted) chosen.add(first + random.integer(end - first));
  return [...chosen];
}

const sons = (queens: readonly number[]): Share[] =>
  queens.map((queen) => ({ of: `Q${queen}`, share: (1 - BACKGROUND_SHARE) / queens.length }));

/** Season's matings: for each yard, one to be shared, or a way to draw one for each queen. */
function yardsOf(
  random: Random,
  shape: RegistryShape,
  season: number,
  older: readonly [number, number],
  pools: DronePoolInput[],
) {
  const { yards, seasons, meeting, droneMothers, around } = shape;
  const here = Math.round(((season + 1) * yards) / seasons) - Math.round((season * yards) / seasons);
  return Array.from({ length: here }, (_, yard): (() => MatingInput) => {
    if (meeting === 'strangers') {
      return () => ({
        kind: 'drone-mothers',
        droneMothers: sons(drawn(random, ...older, droneMothers)),
        backgrounds,
      });
    }
    if (meeting === 'pool') {
      const id = `S${season}Y${yard}`;
      pools.push({ id, droneMothers: sons(drawn(random, ...older, droneMothers)), backgrounds });
      return () => ({ kind: 'pool', pool: id });
    }
    const flying = drawn(random, ...older, around);
    return () => {
      const met = drawn(random, 0, flying.length, droneMothers).map((place) => flying[place]!);
      return { kind: 'drone-mothers', droneMothers: sons(met), backgrounds };
    };
  });
}

export function inventedRegistry(shape: RegistryShape, seed = 1): PedigreeInput {
  const random = randomGenerator(seed);
  const { queens: total, seasons } = shape;
  const firstOf = (season: number): number => Math.floor((Math.max(0, season) * total) / seasons);
  const queens: QueenInput[] = [];
  const pools: DronePoolInput[] = [];
  for (let season = 0; season < seasons; season++) {
    const [first, end] = [firstOf(season), firstOf(season + 1)];
    const older = season === 0 ? ([first, end] as const) : ([firstOf(season - 3), first] as const);
    const yards = yardsOf(random, shape, season, older, pools);
    const range = older[1] - older[0];
    const breeders = Math.max(1, Math.floor(range * shape.breeders));
    for (let queen = first; queen < end; queen++) {
      const dam = older[0] + Math.floor((random.integer(breeders) / breeders) * range);
      queens.push({
        id: `Q${queen}`,
        dams: season === 0 ? [] : [{ of: `Q${dam}`, share: 1 }],
        background: season === 0 ? 'local' : '',
        mating: random.choice(yards)(),
        effectiveMates: 12,
      });
    }
  }
  return { backgrounds: [{ id: 'local', kinship: 0.03 }], pools, drones: [], queens };
}
