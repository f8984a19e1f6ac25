import { describe, expect, it } from 'vitest';
import { droneSharesByDistance, perSquareKilometre, WEIBULL_KERNEL } from '../../../../graph/choice/index.ts';

describe('drone shares by distance', () => {
  it('sum to 1 with the unrecorded, and equal colonies at equal distance share alike', () => {
    const found = droneSharesByDistance(
      [
        { id: 'a', colonies: 5, distanceKilometres: 1 },
        { id: 'b', colonies: 5, distanceKilometres: 1 },
        { id: 'c', colonies: 5, distanceKilometres: 4 },
      ],
      0.5,
    )!;
    const [a, b, c] = found.shares.map(({ share }) => share);
    expect(a! + b! + c! + found.unrecorded).toBeCloseTo(1, 12);
    expect(a).toBe(b);
    expect(c).toBeLessThan(a!);
  });

  it('grow in proportion to the colonies', () => {
    const share = (colonies: number): number => {
      const found = droneSharesByDistance([{ id: 'a', colonies, distanceKilometres: 0 }], 1)!;
      return found.shares[0]!.share / found.unrecorded;
    };
    expect(share(20)).toBeCloseTo(2 * share(10), 12);
  });

  it('are unknown when there is no colony at all', () => {
    expect(droneSharesByDistance([], 0)).toBeUndefined();
    expect(droneSharesByDistance([], 1)).toEqual({ shares: [], unrecorded: 1 });
  });

  it('weigh an even spread of colonies by its density: the rings add up to all matings', () => {
    let sum = 0;
    for (let ring = 0; ring < 300; ring += 1) {
      const middle = ring + 0.5;
      sum += perSquareKilometre(WEIBULL_KERNEL, middle, 0.5) * Math.PI * ((ring + 1) ** 2 - ring ** 2);
    }
    expect(sum).toBeCloseTo(1, 9);
  });
});
