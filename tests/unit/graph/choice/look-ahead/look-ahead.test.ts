import { describe, expect, it } from 'vitest';
import { type LookAheadInput, lookAhead, type SeasonOutlook } from '../../../../../graph/choice/index.ts';

const YARD: LookAheadInput = {
  policy: {
    colonies: 15,
    breeders: 4,
    daughtersEach: 4,
    success: 0.6,
    requeened: 0.2,
    ownDrones: 0.3,
    droneMothers: 'all',
    mates: 12,
    winterLoss: 0.25,
    winterOnMerit: 0.3,
    reliability: 0.4,
  },
  founders: Array.from({ length: 15 }, (_, k) => ({ line: `line ${k % 5}` })),
  background: { merit: 0, kinship: 0, sexAlleles: 20 },
  variance: 1,
  seasons: 15,
  replicates: 200,
  seed: 1,
};
type Changes = Omit<Partial<LookAheadInput>, 'policy'> & {
  readonly policy?: Partial<LookAheadInput['policy']>;
};
const changed = (changes: Changes): LookAheadInput => ({
  ...YARD,
  ...changes,
  policy: { ...YARD.policy, ...changes.policy },
});

function played(changes: Changes, viable = true): readonly SeasonOutlook[] {
  const found = lookAhead(changed({ replicates: 60, ...changes }), { viable });
  if (!found.ok) throw new Error(JSON.stringify(found));
  return found.seasons;
}

describe('looking ahead', () => {
  it('gives the same bands for the same seed and others for another', () => {
    const one = played({});
    expect(played({})).toEqual(one);
    expect(played({ seed: 2 })).not.toEqual(one);
  });

  it('changes nothing at all when no colony is lost and no daughter is raised', () => {
    const seasons = played({ policy: { winterLoss: 0, daughtersEach: 0 } });
    for (const { season, ...figures } of seasons) expect({ season: 0, ...figures }).toEqual(seasons[0]);
  });

  it('gains exactly nothing in a trait without variance', () => {
    for (const { gain } of played({ variance: 0 })) expect([gain!.low, gain!.high]).toEqual([0, 0]);
  });

  it('never inbreeds queens that meet unrelated drones alone, and loses no brood where alleles are without number', () => {
    for (const { inbreeding, viability } of played({
      policy: { ownDrones: 0 },
      background: { merit: 0, kinship: 0, sexAlleles: 1_000_000_000 },
    })) {
      expect(inbreeding!.high).toBe(0);
      expect(viability!.mean).toBeGreaterThan(0.9999);
    }
  });

  it('starts with the brood viability of the background: 1 - 1/k', () => {
    const [start] = played({ replicates: 400, policy: { ownDrones: 0 } });
    // 400 yards of 15 queens with 12 mates: the standard error is sqrt(0.25 * 0.1 * 0.9 / 12 / 6000) = 0.0006.
    expect(start!.viability!.mean).toBeCloseTo(1 - 1 / 20, 2);
  });

  it('never gains lines, nor alleles in a closed yard', () => {
    const seasons = played({ policy: { ownDrones: 1 } });
    for (let k = 1; k < seasons.length; k++)
      expect(seasons[k]!.lines.mean).toBeLessThanOrEqual(seasons[k - 1]!.lines.mean);
    expect(seasons.at(-1)!.alleles.mean).toBeLessThan(seasons[0]!.alleles.mean);
    expect(seasons.at(-1)!.viability!.mean).toBeLessThan(seasons[0]!.viability!.mean);
  });

  it('gains by choice, more with a more reliable index, and nothing when breeders are chosen by lot', () => {
    const blind = { winterOnMerit: 0, ownDrones: 0.5 };
    const last = (reliability: number): number =>
      played({ policy: { ...blind, reliability }, replicates: 150 }).at(-1)!.gain!.mean;
    const [lot, poor, good] = [last(0), last(0.2), last(0.8)];
    expect(Math.abs(lot)).toBeLessThan(0.15);
    expect(poor).toBeGreaterThan(lot + 0.2);
    expect(good).toBeGreaterThan(poor + 0.2);
  });

  it('gains by winters that spare the better, without any choice', () => {
    const seasons = played({
      policy: { reliability: 0, winterOnMerit: 0.8, ownDrones: 0.5 },
      replicates: 150,
    });
    expect(seasons.at(-1)!.gain!.mean).toBeGreaterThan(0.3);
  });

  it('keeps more lines with a limit of breeders for each line', () => {
    const lines = (limits: Changes['policy']): number =>
      played({ policy: { requeened: 1, ...limits } }).at(-1)!.lines.mean;
    expect(lines({ mostPerLine: 1 })).toBeGreaterThan(lines({}) + 0.5);
  });

  it('tells the share of histories that lost every colony, and leaves them out of gain and inbreeding', () => {
    const seasons = played({ policy: { winterLoss: 1 } });
    expect(seasons[1]).toMatchObject({
      lost: 1,
      lines: { mean: 0 },
      alleles: { mean: 0 },
      colonies: { mean: 0 },
    });
    expect(seasons[1]).not.toHaveProperty('gain');
  });

  it('loses the share of colonies that the winter takes, whatever it goes by', () => {
    for (const winterOnMerit of [0, 0.7]) {
      const [, first] = played({ policy: { daughtersEach: 0, winterOnMerit }, replicates: 400 });
      // 6,000 winters: standard error 0.0056 of the share, 0.084 of 15 colonies.
      expect(Math.abs(first!.colonies.mean - 15 * 0.75)).toBeLessThan(0.35);
    }
  });

  it('starts from the merits, errors and kinships of the founders when they are given', () => {
    const founders = [
      { line: 'a', merit: 2 },
      { line: 'b', merit: 4, errorVariance: 0.5 },
    ];
    const founderKinship = [0.625, 0.25, 0.25, 0.5];
    const [start, next] = played(
      {
        founders,
        founderKinship,
        policy: { winterLoss: 0, requeened: 1, daughtersEach: 40, success: 1, ownDrones: 1, mates: 1 },
        replicates: 4_000,
        seasons: 1,
      },
      false,
    );
    expect(start!.inbreeding!.mean).toBe(0.125);
    // Daughters' F: kinship of a random dam with a random drone mother: (0.625 + 2 * 0.25 + 0.5)/4.
    expect(next!.inbreeding!.mean).toBeCloseTo(0.40625, 2);
  });

  it('stops when it is told to and reports how far it is', () => {
    const done: number[] = [];
    const found = lookAhead(changed({ replicates: 10 }), {
      onProgress: (share) => done.push(share),
      shouldStop: () => done.length === 3,
    });
    expect(found).toEqual({ ok: false, code: 'stopped' });
    expect(done).toEqual([0.1, 0.2, 0.3]);
  });

  it('says everything that is wrong with the settings', () => {
    const found = lookAhead(changed({ seasons: 2_000, policy: { ownDrones: 1.2, mates: 0 }, variance: -1 }));
    if (found.ok || found.code !== 'problems') throw new Error('The settings are wrong.');
    expect(found.problems.map(({ field }) => field)).toEqual(['mates', 'ownDrones', 'variance', 'colonies']);
  });
});
