import { describe, expect, it } from 'vitest';
import { compilePedigree } from '../../../../graph/kinship/compile.ts';
import { NodeKind } from '../../../../graph/kinship/pedigree.ts';
import type { PedigreeInput } from '../../../../graph/kinship/pedigree-input.ts';
import { pedigreeProblemText } from '../../../../graph/kinship/problems.ts';
import { compiled } from '../../../helpers/compiled.ts';
import {
  BASE,
  daughter,
  founder,
  oneDrone,
  pedigreeOf,
  sonsOf,
  unrelatedDrones,
} from '../../../helpers/pedigrees.ts';
import { randomPedigree } from '../../../helpers/random-pedigrees.ts';

function problems(input: PedigreeInput) {
  const result = compilePedigree(input);
  return result.ok ? [] : result.problems;
}

const codes = (input: PedigreeInput): string[] =>
  problems(input).map(({ code, record }) => `${code} ${record}`);

const good = [founder('A', unrelatedDrones), daughter('B', 'A', unrelatedDrones), daughter('C', 'B')];

describe('a compiled pedigree', () => {
  it('has every node after its parents, and coefficients that sum to 1', () => {
    for (let seed = 0; seed < 50; seed++) {
      const { size, kind, parentStart, parent, coefficient } = compiled(randomPedigree(seed, 25));
      for (let node = 0; node < size; node++) {
        let sum = 0;
        for (let k = parentStart[node]!; k < parentStart[node + 1]!; k++) {
          expect(parent[k]!).toBeLessThan(node);
          sum += coefficient[k]!;
        }
        expect(sum).toBeCloseTo(kind[node] === NodeKind.background ? 0 : 1, 12);
      }
    }
  });

  it('has no negative Mendelian variance, and none for pools', () => {
    for (let seed = 0; seed < 50; seed++) {
      const { size, kind, mendelian } = compiled(randomPedigree(seed, 25));
      for (let node = 0; node < size; node++) {
        expect(mendelian[node]!).toBeGreaterThanOrEqual(0);
        if (kind[node] === NodeKind.pool) expect(mendelian[node]).toBe(0);
      }
    }
  });

  it('is empty for an empty registry', () => {
    expect(compiled({ backgrounds: [], pools: [], drones: [], queens: [] }).size).toBe(0);
  });

  it('keeps the queens in the order of the input, whatever the order of birth', () => {
    const pedigree = compiled(pedigreeOf([...good].reverse()));
    expect(pedigree.queenIds).toEqual(['C', 'B', 'A']);
    expect(pedigree.queenNode[2]!).toBeLessThan(pedigree.queenNode[0]!);
  });

  it('lets one list of drone mothers that many queens share be one node', () => {
    const queens = ['K', 'L', 'M'].map((id) => founder(id, sonsOf({ S: 0.5, [BASE]: 0.5 })));
    const { kind } = compiled(pedigreeOf([founder('S'), ...queens]));
    expect([...kind].filter((one) => one === NodeKind.pool)).toHaveLength(1);
  });

  it('does not change the input', () => {
    const input = randomPedigree(3, 20);
    const before = JSON.stringify(input);
    compiled(input);
    expect(JSON.stringify(input)).toBe(before);
  });

  it('takes a queen who met her own sons, and mother and daughter who met one pool', () => {
    const queens = [
      founder('A', { kind: 'pool', pool: 'P' }),
      daughter('B', 'A', { kind: 'pool', pool: 'P' }),
      daughter('C', 'B', sonsOf({ C: 1 })),
      daughter('D', 'C'),
    ];
    const pools = [{ id: 'P', droneMothers: [{ of: 'A', share: 1 }], backgrounds: [] }];
    const pedigree = compiled({ ...pedigreeOf(queens), pools });
    /** A met her own sons: F of B 1/2. B met A's: f(B, A) = 1/2 f(A, A) + 1/2 f(son, A) = 1/2: F of C 1/2. */
    expect([...pedigree.inbreeding]).toEqual([0, 1 / 2, 1 / 2, 3 / 4]);
  });
});

describe('what is wrong with a pedigree', () => {
  it('is told all at once', () => {
    const input: PedigreeInput = {
      backgrounds: [{ id: BASE, kinship: 1.5 }],
      pools: [
        { id: 'P', droneMothers: [{ of: 'nobody', share: 0.5 }], backgrounds: [{ of: BASE, share: 0.4 }] },
      ],
      drones: [{ id: 'd', mother: 'ghost' }],
      queens: [
        founder('A', unrelatedDrones, 0.5),
        founder('A'),
        daughter('B', 'missing'),
        daughter('C', 'A', { kind: 'pool', pool: 'Q' }),
      ],
    };
    expect(codes(input).sort()).toEqual([
      'background-kinship base',
      'doubled-id A',
      'effective-mates A',
      'share-sum P',
      'unknown-id B',
      'unknown-id C',
      'unknown-id P',
      'unknown-id d',
    ]);
  });

  it('names the list, the place in it and the field', () => {
    const [problem] = problems(pedigreeOf([founder('A'), daughter('B', 'missing')]));
    expect(problem).toMatchObject({
      list: 'queens',
      index: 1,
      record: 'B',
      field: 'dams',
      found: "'missing'",
    });
    expect(pedigreeProblemText(problem!)).toBe(
      "Queen 'B', dams: found 'missing'. No queen has that id. Add that queen, or correct the id.",
    );
  });

  it.each([
    ['a share above 1', sonsOf({ A: 1.2 }), ['share-range B', 'share-sum B']],
    ['a share of 0', sonsOf({ A: 0, [BASE]: 1 }), ['share-range B']],
    ['shares that do not sum to 1', sonsOf({ A: 0.5, [BASE]: 0.4 }), ['share-sum B']],
    ['an unknown drone', oneDrone('x'), ['unknown-id B']],
    [
      'a name twice',
      {
        kind: 'drone-mothers',
        droneMothers: [
          { of: 'A', share: 0.5 },
          { of: 'A', share: 0.5 },
        ],
        backgrounds: [],
      } as const,
      ['doubled-share B'],
    ],
  ])('%s is refused', (_, mating, expected) => {
    expect(codes(pedigreeOf([founder('A', unrelatedDrones), daughter('B', 'A', mating)]))).toEqual(expected);
  });

  it('a dam nobody knows the mating of is told once, at the dam', () => {
    const input = pedigreeOf([founder('A'), daughter('B', 'A'), daughter('C', 'A')]);
    expect(codes(input)).toEqual(['dam-without-mating A']);
  });

  it('shares of one third, three times, are a whole', () => {
    const third = sonsOf({ A: 1 / 3, B: 1 / 3, [BASE]: 1 / 3 });
    expect(codes(pedigreeOf([founder('A'), founder('B'), founder('C', third), daughter('D', 'C')]))).toEqual(
      [],
    );
  });
});

describe('a loop of descent', () => {
  it('is told by the queens on it', () => {
    const found = problems(
      pedigreeOf(
        [...good.slice(1), daughter('A', 'C', unrelatedDrones), founder('Z')].map((queen) => ({
          ...queen,
          mating: unrelatedDrones,
        })),
      ),
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code: 'cycle', record: 'B', field: 'dams' });
    expect(found[0]!.found).toBe("a loop of descent through 'B', 'A', 'C'");
  });

  it('of a queen who is her own dam is told', () => {
    const found = problems(pedigreeOf([daughter('A', 'A', unrelatedDrones)]));
    expect(found.map(({ code, found: text }) => [code, text])).toEqual([
      ['cycle', "a loop of descent through 'A'"],
    ]);
  });

  it('through drones is told: a queen met by drones of her own daughter', () => {
    const found = problems(pedigreeOf([founder('A', sonsOf({ B: 1 })), daughter('B', 'A')]));
    expect(found.map(({ found: text }) => text)).toEqual(["a loop of descent through 'B', 'A'"]);
  });

  it('is told for each knot of queens', () => {
    const knot = (a: string, b: string) => [daughter(a, b, unrelatedDrones), daughter(b, a, unrelatedDrones)];
    const found = problems(
      pedigreeOf([...knot('A', 'B'), ...knot('C', 'D'), daughter('E', 'D', unrelatedDrones)]),
    );
    expect(found.map(({ found: text }) => text)).toEqual([
      "a loop of descent through 'A', 'B'",
      "a loop of descent through 'C', 'D'",
    ]);
  });
});
