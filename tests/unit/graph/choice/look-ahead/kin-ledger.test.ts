import { describe, expect, it } from 'vitest';
import {
  kinshipOf,
  newLedger,
  writeBackgroundDrone,
  writeDrone,
  writeFounders,
  writeQueen,
} from '../../../../../graph/choice/look-ahead/kin-ledger.ts';
import { compilePedigree } from '../../../../../graph/kinship/compile.ts';
import type { DroneInput, QueenInput } from '../../../../../graph/kinship/pedigree-input.ts';
import { kinshipBlock } from '../../../../../graph/kinship/sweeps.ts';
import { randomGenerator } from '../../../../../graph/numerics/random.ts';

describe('the ledger of kinships', () => {
  it.each([1, 2, 3, 4, 5])(
    'agrees with the compiled pedigree of the same queens and drones (history %i)',
    (seed) => {
      const random = randomGenerator(seed);
      const theta = 0.125;
      const ledger = newLedger(60);
      writeFounders(ledger, 3, undefined, theta);
      const queens: QueenInput[] = [];
      const drones: DroneInput[] = [];
      const founder = (id: string): QueenInput => ({ id, dams: [], background: 'base', effectiveMates: 1 });
      for (let k = 0; k < 3; k++) queens.push(founder(String(k)));
      const mothers = [0, 1, 2];
      const entries: { readonly entry: number; readonly queen: boolean }[] = mothers.map((entry) => ({
        entry,
        queen: true,
      }));
      for (let k = 0; k < 15; k++) {
        const mother = random.choice(mothers);
        // A background drone is written out as the drone of a founder of that background.
        const known = random.uniform() < 0.7;
        const drone = known ? writeDrone(ledger, mother) : writeBackgroundDrone(ledger, theta);
        if (!known) queens.push(founder(`mother of ${drone}`));
        drones.push({ id: String(drone), mother: known ? String(mother) : `mother of ${drone}` });
        const dam = random.choice(mothers);
        const at = queens.findIndex(({ id }) => id === String(dam));
        const already = queens[at]!.mating;
        const father = already?.kind === 'drones' ? Number(already.drones[0]!.of) : drone;
        queens[at] = {
          ...queens[at]!,
          mating: { kind: 'drones', drones: [{ of: String(father), share: 1 }] },
        };
        const daughter = writeQueen(ledger, dam, father);
        queens.push({
          id: String(daughter),
          dams: [{ of: String(dam), share: 1 }],
          background: '',
          effectiveMates: 1,
        });
        mothers.push(daughter);
        entries.push({ entry: drone, queen: false }, { entry: daughter, queen: true });
      }
      const compiled = compilePedigree({
        backgrounds: [{ id: 'base', kinship: theta }],
        pools: [],
        drones,
        queens,
      });
      if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
      const { pedigree } = compiled;
      const nodes = entries.map(({ entry, queen }) =>
        queen
          ? pedigree.queenNode[pedigree.queenIndex.get(String(entry))!]!
          : pedigree.droneNode.get(String(entry))!,
      );
      const block = kinshipBlock(pedigree, nodes);
      entries.forEach((a, row) => {
        entries.forEach((b, k) => {
          expect(kinshipOf(ledger, a.entry, b.entry)).toBeCloseTo(block[row * nodes.length + k]!, 12);
        });
      });
    },
  );
});
