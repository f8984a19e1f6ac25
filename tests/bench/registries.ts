/**
 * Invented registries of any size for the benches: twelve seasons; each queen has a dam of the last three
 * seasons and flew at a yard of her own season, among the sons of fifty drone mothers of the last three
 * seasons and one part in ten of unrecorded bees. 250 yards and seasons at 100,000 queens, in proportion elsewhere.
 */
import type {
  DronePoolInput,
  MatingInput,
  PedigreeInput,
  QueenInput,
  Share,
} from '../../graph/kinship/pedigree-input.ts';
import { type Random, randomGenerator } from '../../graph/numerics/random.ts';

export interface RegistryShape {
  readonly queens: number;
  readonly seasons: number;
  /** Yards and seasons with a pool of their own; 0: every queen has a list of drone mothers of her own. */
  readonly pools: number;
  readonly droneMothers: number;
  /** Share of the queens of a season from whom daughters are raised. */
  readonly breeders: number;
}

export const REGISTRY_DEFAULTS = { seasons: 12, droneMothers: 50, breeders: 0.1 };

export function registryShape(queens: number, options: Partial<RegistryShape> = {}): RegistryShape {
  return { queens, pools: Math.max(12, Math.round(queens / 400)), ...REGISTRY_DEFAULTS, ...options };
}

const BACKGROUND_SHARE = 0.1;

function mothers(random: Random, first: number, end: number, count: number): Share[] {
  const chosen = new Set<number>();
  const wanted = Math.min(count, end - first);
  while (chosen.size < wanted) chosen.add(first + random.integer(end - first));
  return [...chosen].map((queen) => ({ of: `Q${queen}`, share: (1 - BACKGROUND_SHARE) / wanted }));
}

const backgrounds: readonly Share[] = [{ of: 'local', share: BACKGROUND_SHARE }];

export function inventedRegistry(shape: RegistryShape, seed = 1): PedigreeInput {
  const random = randomGenerator(seed);
  const { queens: total, seasons } = shape;
  const firstOf = (season: number): number => Math.floor((Math.max(0, season) * total) / seasons);
  const queens: QueenInput[] = [];
  const pools: DronePoolInput[] = [];
  for (let season = 0; season < seasons; season++) {
    const first = firstOf(season);
    const end = firstOf(season + 1);
    const older = season === 0 ? ([first, end] as const) : ([firstOf(season - 3), first] as const);
    const here =
      Math.round(((season + 1) * shape.pools) / seasons) - Math.round((season * shape.pools) / seasons);
    const matings: MatingInput[] = [];
    for (let k = 0; k < here; k++) {
      const id = `S${season}Y${k}`;
      pools.push({ id, droneMothers: mothers(random, ...older, shape.droneMothers), backgrounds });
      matings.push({ kind: 'pool', pool: id });
    }
    const breeders = Math.max(1, Math.floor((older[1] - older[0]) * shape.breeders));
    for (let queen = first; queen < end; queen++) {
      const dam = older[0] + Math.floor((random.integer(breeders) / breeders) * (older[1] - older[0]));
      queens.push({
        id: `Q${queen}`,
        dams: season === 0 ? [] : [{ of: `Q${dam}`, share: 1 }],
        background: season === 0 ? 'local' : '',
        mating:
          matings.length > 0
            ? random.choice(matings)
            : {
                kind: 'drone-mothers',
                droneMothers: mothers(random, ...older, shape.droneMothers),
                backgrounds,
              },
        effectiveMates: 12,
      });
    }
  }
  return { backgrounds: [{ id: 'local', kinship: 0.03 }], pools, drones: [], queens };
}
