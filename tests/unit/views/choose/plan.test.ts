import { describe, expect, it } from 'vitest';
import { tradeOffCurve } from '../../../../graph/choice/trade-off.ts';
import type { YardId } from '../../../../src/journal/ids.ts';
import {
  breedersOf,
  contributionProblem,
  daughtersToHave,
  fliesAt,
  gainBand,
  isTakenIn,
  linesKept,
  planOf,
  pointAt,
  thriftOf,
} from '../../../../views/choose/plan.ts';
import {
  demoChoosing,
  demoEvaluated,
  demoRanking,
  demoRow,
  demoYardName,
  demoYards,
} from '../../../helpers/demo-choice.ts';
import { denseRelationship } from '../../../helpers/dense-relationship.ts';

const evaluated = demoEvaluated();
const ranking = demoRanking();
const choosing = demoChoosing();
const breeders = breedersOf(evaluated, ranking, choosing, demoYards());

function curve(change: Parameters<typeof demoChoosing>[0] = {}) {
  const found = tradeOffCurve(contributionProblem(evaluated, breeders, demoChoosing(change)));
  if (!found.ok) throw new Error(found.found);
  return found.points;
}

const planAt = (
  points: ReturnType<typeof curve>,
  at: number,
  change: Parameters<typeof demoChoosing>[0] = {},
) => planOf(evaluated, ranking, breeders, points[at]?.shares ?? [], demoChoosing(change));

describe('who is in the choice', () => {
  it('are the queens at the yards of the keeper, unless the keeper said otherwise', () => {
    expect(breeders.map(({ row }) => row.queen.name)).not.toContain('Umber');
    expect(isTakenIn(demoRow('Umber'), demoChoosing({ takenIn: { [demoRow('Umber').id]: true } }))).toBe(
      true,
    );
    expect(isTakenIn(demoRow('Gale'), demoChoosing({ takenIn: { [demoRow('Gale').id]: false } }))).toBe(
      false,
    );
  });

  it('fly each at the yard where she meets least kin, or all at the one yard named', () => {
    const bora = fliesAt(evaluated, demoRow('Bora'), undefined, demoYards());
    expect(demoYardName(bora?.risk.yard ?? '')).toBe('Sallow Bank');
    const fallow = evaluated.work.yards.find(({ yard }) => demoYardName(yard) === 'High Fallow')
      ?.yard as YardId;
    expect(fliesAt(evaluated, demoRow('Bora'), fallow, demoYards())).toMatchObject({
      risk: { yard: fallow },
    });
  });
});

describe('a plan in whole daughters', () => {
  const points = curve();

  it('has as many daughters as are wanted, and none above the most from one queen', () => {
    points.forEach((_, at) => {
      const { dams, daughters } = planAt(points, at);
      expect(daughters).toBe(12);
      expect(Math.max(...dams.map((dam) => dam.daughters))).toBeLessThanOrEqual(4);
    });
  });

  it('starts with the best at the end of most gain: four each from the first three', () => {
    expect(planAt(points, 0).dams.map(({ row, daughters }) => [row.queen.name, daughters])).toEqual([
      ['Brook', 4],
      ['Gale', 4],
      ['Norther', 4],
    ]);
  });

  it('gains the mean merit of its dams above that of all in the choice', () => {
    const { dams, gain } = planAt(points, 0);
    const mean = breeders.reduce((sum, { row }) => sum + row.merit, 0) / breeders.length;
    const chosen = dams.reduce((sum, { row, daughters }) => sum + (daughters / 12) * row.merit, 0);
    expect(gain).toBeCloseTo(chosen - mean, 10);
  });

  it('has the mean kinship of its dams, drawn with replacement, as the tabular method gives it', () => {
    const { dams, kinship } = planAt(points, Math.floor(points.length / 2));
    const dense = denseRelationship(evaluated.work.pedigree);
    let expected = 0;
    for (const a of dams) {
      for (const b of dams) {
        const f = dense.at(`queen:${a.row.id}`, `queen:${b.row.id}`) / 2;
        expected += (a.daughters / 12) * (b.daughters / 12) * f;
      }
    }
    expect(kinship).toBeCloseTo(expected, 10);
  });

  it('says the gain with a band of nine in ten either side', () => {
    const [low, high] = gainBand({ gain: 0.5, gainError: 0.2 } as never);
    // 1.6449: the 95 % point of the normal curve (any table of it).
    expect(low).toBeCloseTo(0.5 - 1.6449 * 0.2, 6);
    expect(high).toBeCloseTo(0.5 + 1.6449 * 0.2, 6);
  });

  it('counts daughters by line, those without any last', () => {
    const plan = planAt(points, Math.floor(points.length / 2));
    const lines = linesKept(ranking, plan);
    expect(lines.reduce((sum, { daughters }) => sum + daughters, 0)).toBe(12);
    expect(lines.reduce((sum, { living }) => sum + living.length, 0)).toBe(ranking.rows.length);
    const counts = lines.map(({ daughters }) => daughters);
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
  });
});

describe('a keeper of few queens', () => {
  it('gets as many daughters as the most from one queen allows', () => {
    const two = breeders.slice(0, 2);
    expect(daughtersToHave(2, choosing)).toBe(8);
    expect(daughtersToHave(9, choosing)).toBe(12);
    const found = tradeOffCurve(contributionProblem(evaluated, two, choosing));
    if (!found.ok) throw new Error(found.found);
    const plan = planOf(evaluated, ranking, two, found.points[0]?.shares ?? [], choosing);
    expect(plan.dams.map(({ daughters }) => daughters)).toEqual([4, 4]);
  });

  it('with nobody in the choice is told so', () => {
    const none = tradeOffCurve(contributionProblem(evaluated, [], choosing));
    expect(none.ok ? '' : none.found).toBe('No queen is among the candidates.');
  });
});

describe('a limit to the inbreeding of the daughters’ brood', () => {
  it('is kept by every point of the curve', () => {
    const points = curve({ droneKinshipLimit: 0.03 });
    for (const { shares } of points) {
      const brood = breeders.reduce(
        (sum, { flies }, k) => sum + (shares[k] ?? 0) * (flies?.risk.broodInbreeding ?? 0),
        0,
      );
      expect(brood).toBeLessThanOrEqual(0.03 + 1e-9);
    }
  });

  it('that no choice can keep is refused with what would do', () => {
    const none = tradeOffCurve(
      contributionProblem(evaluated, breeders, demoChoosing({ droneKinshipLimit: 0 })),
    );
    expect(none.ok).toBe(false);
    if (!none.ok) expect(none.remedy).not.toBe('');
  });
});

describe('the place on the curve', () => {
  const points = [{ groupKinship: 0.3 }, { groupKinship: 0.2 }, { groupKinship: 0.1 }];

  it('goes from the most kinship at 0 to the least at 1', () => {
    expect([0, 0.5, 1].map((thrift) => pointAt(points, thrift))).toEqual([0, 1, 2]);
  });

  it('is kept as a share of the way, and found again', () => {
    expect(points.map((_, at) => thriftOf(points, at))).toEqual([0, expect.closeTo(0.5, 9), 1]);
    points.forEach((_, at) => {
      expect(pointAt(points, thriftOf(points, at))).toBe(at);
    });
    expect(thriftOf([{ groupKinship: 0.2 }], 0)).toBe(0);
  });
});
