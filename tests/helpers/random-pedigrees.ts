/**
 * Random pedigrees with everything at once: related backgrounds, loops, shared pools, lists of drone mothers,
 * single drones, uncertain dams, queens never mated, own sons, mother and daughter at one pool, rows in any order.
 */
import type {
  DroneInput,
  DronePoolInput,
  MatingInput,
  PedigreeInput,
  QueenInput,
  Share,
} from '../../graph/kinship/pedigree-input.ts';
import { type Random, randomGenerator } from '../../graph/numerics/random.ts';

/** Shares in eighths, so that sums are exact. */
function randomShares(random: Random, names: readonly string[], most: number): Share[] {
  const count = 1 + random.integer(Math.min(most, names.length));
  const chosen = shuffled(random, names).slice(0, count);
  const eighths = new Array<number>(count).fill(1);
  for (let left = 8 - count; left > 0; left--) eighths[random.integer(count)]!++;
  return chosen.map((of, k) => ({ of, share: eighths[k]! / 8 }));
}

function shuffled<Item>(random: Random, items: readonly Item[]): Item[] {
  const result = [...items];
  for (let k = result.length - 1; k > 0; k--) {
    const other = random.integer(k + 1);
    [result[k], result[other]] = [result[other]!, result[k]!];
  }
  return result;
}

const BACKGROUNDS = [
  { id: 'local', kinship: 0.125 },
  { id: 'bought', kinship: 0 },
];

function splitShares(shares: readonly Share[]) {
  const isBackground = ({ of }: Share) => BACKGROUNDS.some(({ id }) => id === of);
  return {
    droneMothers: shares.filter((share) => !isBackground(share)),
    backgrounds: shares.filter(isBackground),
  };
}

interface Growing {
  readonly queens: QueenInput[];
  readonly pools: DronePoolInput[];
  readonly drones: DroneInput[];
}

function randomMating(random: Random, { queens, pools, drones }: Growing, self: string): MatingInput {
  const mothers = [...new Set([...queens.map(({ id }) => id), self, ...BACKGROUNDS.map(({ id }) => id)])];
  const kind = random.uniform();
  if (kind < 0.4 && pools.length > 0) return { kind: 'pool', pool: random.choice(pools).id };
  if (kind < 0.6 && drones.length > 0) {
    return {
      kind: 'drones',
      drones: randomShares(
        random,
        drones.map(({ id }) => id),
        3,
      ),
    };
  }
  return { kind: 'drone-mothers', ...splitShares(randomShares(random, mothers, 4)) };
}

function addQueen(random: Random, growing: Growing, founders: number): void {
  const id = `Q${growing.queens.length}`;
  const mated = growing.queens.filter(({ mating }) => mating !== undefined).map((queen) => queen.id);
  const isFounder = growing.queens.length < founders || mated.length === 0;
  const mating = random.uniform() < 0.85 ? randomMating(random, growing, id) : undefined;
  const father =
    random.uniform() < 0.15 ? randomMating(random, growing, growing.queens[0]?.id ?? id) : undefined;
  growing.queens.push({
    id,
    dams: isFounder ? [] : randomShares(random, mated, random.uniform() < 0.25 ? 3 : 1),
    background: isFounder ? random.choice(BACKGROUNDS).id : '',
    ...(mating ? { mating } : {}),
    ...(father ? { father } : {}),
    effectiveMates: random.choice([1, 1.5, 3, 12]),
  });
}

export function randomPedigree(seed: number, queens = 14): PedigreeInput {
  const random = randomGenerator(seed);
  const growing: Growing = { queens: [], pools: [], drones: [] };
  while (growing.queens.length < queens) {
    addQueen(random, growing, 3);
    const mothers = [...growing.queens.map(({ id }) => id), ...BACKGROUNDS.map(({ id }) => id)];
    if (random.uniform() < 0.25) {
      const id = `P${growing.pools.length}`;
      growing.pools.push({ id, ...splitShares(randomShares(random, mothers, 4)) });
    }
    if (random.uniform() < 0.25) {
      growing.drones.push({ id: `D${growing.drones.length}`, mother: random.choice(growing.queens).id });
    }
  }
  return { ...growing, backgrounds: BACKGROUNDS };
}

/** The same facts with every list in another order. */
export function reordered(input: PedigreeInput, seed: number): PedigreeInput {
  const random = randomGenerator(seed);
  return {
    backgrounds: shuffled(random, input.backgrounds),
    pools: shuffled(random, input.pools),
    drones: shuffled(random, input.drones),
    queens: shuffled(random, input.queens),
  };
}
