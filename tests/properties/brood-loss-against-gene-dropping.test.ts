import { describe, expect, it } from 'vitest';
import { broodViability, droneSource } from '../../graph/alleles/index.ts';
import { compiled } from '../helpers/compiled.ts';
import { dropGenes } from '../helpers/drop-genes.ts';
import { randomPedigree } from '../helpers/random-pedigrees.ts';

const HISTORIES = 5_000;
/** Some 70 figures over all pedigrees: by chance one beyond this many standard errors in 20,000 such tests. */
const STANDARD_ERRORS = 5;
const ALLELES = new Map([
  ['local', 5],
  ['bought', 9],
]);

describe('brood loss by like sex alleles', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'of each queen with the drones she met agrees with genes dropped by lot, random pedigree %i',
    (seed) => {
      const input = randomPedigree(seed * 2003, 12);
      const pedigree = compiled(input);
      const dropped = dropGenes(input, HISTORIES, seed, ALLELES);
      const alleles = new Map([...ALLELES].map(([background, count]) => [background, { count }]));
      for (const { id, mating, effectiveMates } of input.queens) {
        if (!mating) continue;
        const found = broodViability(
          pedigree,
          { of: { queen: id }, drones: droneSource(pedigree, mating), mates: effectiveMates, alleles },
          { histories: HISTORIES, seed: 50 + seed },
        );
        const { mean, standardError } = dropped.broodInbreeding(id)!;
        const allowed = STANDARD_ERRORS * Math.hypot(standardError, found.standardError) + 1 / HISTORIES;
        expect(Math.abs(found.loss - mean), `${id}: ${found.loss}, dropped ${mean}`).toBeLessThan(allowed);
      }
    },
  );

  it('would be told from that of another number of alleles', () => {
    const input = randomPedigree(2003, 12);
    const id = input.queens.find(({ mating }) => mating)!.id;
    const many = dropGenes(
      input,
      HISTORIES,
      1,
      new Map([...ALLELES].map(([name, count]) => [name, count + 4])),
    );
    const few = dropGenes(input, HISTORIES, 1, ALLELES);
    const [a, b] = [many.broodInbreeding(id)!, few.broodInbreeding(id)!];
    expect(Math.abs(a.mean - b.mean)).toBeGreaterThan(
      STANDARD_ERRORS * Math.hypot(a.standardError, b.standardError),
    );
  });
});
