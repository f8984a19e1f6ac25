import { describe, expect, it } from 'vitest';
import { whatIfMating } from '../../graph/choice/index.ts';
import { compilePedigree } from '../../graph/kinship/compile.ts';
import type { MatingInput, PedigreeInput, QueenInput } from '../../graph/kinship/pedigree-input.ts';
import { randomGenerator } from '../../graph/numerics/random.ts';
import { randomPedigree } from '../helpers/random-pedigrees.ts';

function compiled(input: PedigreeInput) {
  const result = compilePedigree(input);
  if (!result.ok) throw new Error('The pedigree does not compile.');
  return result.pedigree;
}

/** A random pedigree, a dam in it with a mating, and drones for her daughter; in eighths, so that sums are exact. */
function question(seed: number) {
  const input = randomPedigree(seed);
  const random = randomGenerator(seed);
  const dam = random.choice(input.queens.filter(({ mating }) => mating !== undefined)).id;
  const [one, two] = [random.choice(input.queens).id, random.choice(input.queens).id];
  const at: MatingInput =
    input.pools.length > 0 && random.uniform() < 0.5
      ? { kind: 'pool', pool: random.choice(input.pools).id }
      : {
          kind: 'drone-mothers',
          droneMothers: [{ of: one, share: 0.75 }],
          backgrounds: [{ of: 'local', share: 0.25 }],
        };
  return { input, dam, at, moved: two, random };
}

const daughter = (id: string, dam: string, mating?: MatingInput): QueenInput => ({
  id,
  dams: [{ of: dam, share: 1 }],
  background: '',
  effectiveMates: 6,
  ...(mating ? { mating } : {}),
});

const SEEDS = Array.from({ length: 60 }, (_, k) => k + 1);

describe('what would come of a mating', () => {
  it.each(SEEDS)(
    'is what the pedigree says once the daughter and her drones are written into it (pedigree %i)',
    (seed) => {
      const { input, dam, at } = question(seed);
      const found = whatIfMating(compiled(input), {
        of: { daughterOf: dam },
        at,
        effectiveMates: 6,
        merit: { valueOf: () => 0, variance: 1 },
      });
      const written = compiled({
        ...input,
        queens: [...input.queens, daughter('new', dam, at), daughter('next', 'new')],
      });
      const node = written.queenNode[written.queenIndex.get('new')!]!;
      const mates = written.matesNode[written.queenIndex.get('new')!]!;
      const mendelian = written.mendelian[node]!;
      expect(found.inbreeding).toBeCloseTo(written.diagonal[node]! - 1, 12);
      expect(found.broodInbreeding).toBeCloseTo(
        written.relationToMates[written.queenIndex.get('new')!]! / 2,
        12,
      );
      expect(found.queenMerit!.betweenSisters ** 2).toBeCloseTo(mendelian, 12);
      expect(found.broodMerit!.betweenSisters ** 2).toBeCloseTo(
        (mendelian + written.mendelian[mates]!) / 4,
        12,
      );
    },
  );

  it.each(SEEDS.slice(0, 20))(
    'with drone colonies moved in is that of the mixed drones (pedigree %i)',
    (seed) => {
      const { input, dam, moved } = question(seed);
      const pedigree = compiled(input);
      const at: MatingInput = {
        kind: 'drone-mothers',
        droneMothers: [],
        backgrounds: [{ of: 'local', share: 1 }],
      };
      const mixed: MatingInput = {
        kind: 'drone-mothers',
        droneMothers: [{ of: moved, share: 0.25 }],
        backgrounds: [{ of: 'local', share: 0.75 }],
      };
      const movedIn = { droneMothers: [{ of: moved, share: 1 }], share: 0.25 };
      const one = whatIfMating(pedigree, { of: { daughterOf: dam }, at, movedIn, effectiveMates: 6 });
      const two = whatIfMating(pedigree, { of: { daughterOf: dam }, at: mixed, effectiveMates: 6 });
      expect(one.broodInbreeding).toBeCloseTo(two.broodInbreeding, 12);
    },
  );

  it.each(SEEDS.slice(0, 20))(
    'for a queen there already is her kinship with the drones (pedigree %i)',
    (seed) => {
      const { input, dam, at } = question(seed);
      const pedigree = compiled(input);
      const written = compiled({ ...input, queens: [...input.queens, daughter('new', dam, at)] });
      const queen = written.queenNode[written.queenIndex.get('new')!]!;
      const found = whatIfMating(written, { of: { queen: 'new' }, at, effectiveMates: 6 });
      const coming = whatIfMating(pedigree, { of: { daughterOf: dam }, at, effectiveMates: 6 });
      expect(found.broodInbreeding).toBeCloseTo(coming.broodInbreeding, 12);
      expect(found.inbreeding).toBeCloseTo(written.diagonal[queen]! - 1, 12);
    },
  );
});
