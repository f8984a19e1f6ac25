import { describe, expect, it } from 'vitest';
import {
  type ColonyStart,
  emergingFrom,
  followColony,
  nextDay,
} from '../../../../graph/increase/population.ts';

const rates = {
  firstForaging: 0.25,
  foragingHeldBack: 0.75,
  foragerLoss: 0.15,
  adultFood: 0.007,
  broodFood: 0.018,
  mostEggs: 2000,
  halfStrength: 27_000,
};
const start: ColonyStart = {
  bees: { house: 8000, foragers: 0 },
  brood: { openBrood: 3000, cappedBrood: 4000, survival: 0.9 },
  storesKg: 4,
};

describe('a colony from day to day', () => {
  it('loses no bee and makes none but by emergence and the loss of foragers', () => {
    const before = { house: 6000, foragers: 2500 };
    const after = nextDay(before, 300, rates);
    expect(after.house + after.foragers).toBeCloseTo(8500 + 300 - 0.15 * 2500, 9);
  });

  it('sends house bees out where foragers are missing, and back where there are too many', () => {
    expect(nextDay({ house: 6000, foragers: 0 }, 0, rates).foragers).toBeGreaterThan(0);
    const many = { house: 1000, foragers: 6000 };
    expect(nextDay(many, 0, rates).house).toBeGreaterThan(1000);
  });

  it('brings all brood out within 21 days, capped brood within the first twelve', () => {
    const days = Array.from({ length: 30 }, (_, index) => emergingFrom(start.brood, index));
    const sum = (from: number, to: number) => days.slice(from, to + 1).reduce((all, one) => all + one, 0);
    expect(sum(0, 12)).toBeCloseTo(0.9 * 4000, 6);
    expect(sum(13, 29)).toBeCloseTo(0.9 * 3000, 6);
  });

  it('holds at each day exactly the brood that has not yet emerged', () => {
    const states = followColony(start, rates, 25);
    expect(states[0]?.openBrood).toBe(3000);
    expect(states[9]?.openBrood).toBeCloseTo(0, 9);
    expect(states[9]!.cappedBrood).toBeCloseTo(4000 * (1 - 9 / 12) + 3000, 6);
    expect(states[21]!.openBrood + states[21]!.cappedBrood).toBeCloseTo(0, 6);
  });

  it('has bees of the new queen only 21 days after she begins', () => {
    const without = followColony(start, rates, 45);
    const withQueen = followColony({ ...start, layingFrom: 20 }, rates, 45);
    expect(withQueen[40]!.bees).toBeCloseTo(without[40]!.bees, 9);
    expect(withQueen[42]!.bees).toBeGreaterThan(without[42]!.bees);
  });

  it('carries a full rolling count of her brood once she has laid for 21 days', () => {
    const steady = followColony(
      { ...start, layingFrom: 0 },
      { ...rates, mostEggs: 1000, halfStrength: 0 },
      40,
    );
    expect(steady[40]!.openBrood).toBeCloseTo(9 * 1000, 6);
    expect(steady[40]!.cappedBrood).toBeCloseTo(12 * 1000, 6);
  });

  it('eats its stores down by bees and open brood', () => {
    const [first, second] = followColony(start, rates, 1);
    expect(first!.storesKg - second!.storesKg).toBeCloseTo((8000 * 0.007 + 3000 * 0.018) / 1000, 9);
  });

  it('has no bees left to count where it began with none', () => {
    expect(nextDay({ house: 0, foragers: 0 }, 0, rates)).toEqual({ house: 0, foragers: 0 });
  });
});
