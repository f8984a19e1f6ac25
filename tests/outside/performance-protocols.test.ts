import { describe, expect, it } from 'vitest';
import { collectRecords } from '../../graph/merit/collect-records.ts';
import type { TraitObservation } from '../../graph/merit/observations.ts';
import { TRAITS } from '../../graph/merit/traits/all-traits.ts';
import { hygienic } from '../../graph/merit/traits/hygienic.ts';
import type { TraitId } from '../../graph/merit/traits/trait.ts';
import { FIRST_OF_MAY, hygienicTest, inspection, winter } from '../helpers/yard-observations.ts';

/**
 * Büchler et al. 2013, Standard methods for rearing and selection of Apis mellifera queens, J. Apic. Res. 52(1),
 * sections 3.3.2 (temper), 3.3.3 (swarming), 3.3.4.3 (pin test) and 3.3.7 (overwintering), read. The scores are invented,
 * the rules and so the results are the protocol's.
 */
function recordOf(id: TraitId, observations: readonly TraitObservation[]): number {
  const trait = TRAITS.find((one) => one.id === id)!;
  return collectRecords(trait, observations).records.find(({ queen }) => queen === 'Ash')!.value;
}

const scored = (queen: string, scores: readonly number[]) =>
  scores.map((score, k) =>
    inspection(queen, { gentle: score, calm: score, swarmTendency: score }, { day: FIRST_OF_MAY + 14 * k }),
  );

describe('the published performance protocols', () => {
  it('temper is the arithmetic mean of the season: 3, 4, 3.5, 4 give 3.625', () => {
    const season = [...scored('Ash', [3, 4, 3.5, 4]), ...scored('Beech', [3, 3, 3])];
    expect(recordOf('gentle', season)).toBe(3.625);
    expect(recordOf('calm', season)).toBe(3.625);
  });

  it('swarming is the lowest score of the season: 4, 4, 3, 4 give 3', () => {
    expect(recordOf('swarm-tendency', [...scored('Ash', [4, 4, 3, 4]), ...scored('Beech', [4])])).toBe(3);
  });

  it('the overwintering index is spring over autumn strength: 8 combs of 10 give 0.8', () => {
    const frames = { autumnFramesOfBees: 10, springFramesOfBees: 8 };
    const both = [winter('Ash', true, frames), winter('Beech', true, frames)];
    expect(Math.exp(recordOf('winter-strength', both))).toBeCloseTo(0.8, 12);
  });

  it('a pin test with 12 of 50 cells not cleared is 76 % cleared, and is compared within equal hours only', () => {
    const logit = recordOf('hygienic', [hygienicTest('Ash', 12, 12), hygienicTest('Beech', 30, 12)]);
    // Half a cell is added to either count, so the share read back from the record is 38.5 of 51.
    expect((1 / (1 + Math.exp(-logit))) * 51 - 0.5).toBeCloseTo(0.76 * 50, 10);
    const hours = [hygienicTest('Ash', 12, 12), hygienicTest('Beech', 30, 24)];
    expect(collectRecords(hygienic, hours).records).toEqual([]);
  });
});
