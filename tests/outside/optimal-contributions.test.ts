/**
 * Optimal contributions in closed form (derived; the problem is that of Meuwissen 1997, J. Anim. Sci. 75:934, from
 * memory, not re-read). With A = I, index (3, 2, 1), sum c = 1 and c'c = 1/2 the Lagrange conditions give
 *   c_i = 1/3 + (I_i - 2)/(2 lambda),  c'c = 1/3 + 2/(4 lambda^2) = 1/2,  lambda = sqrt 3
 * that is c = (.622008, .333333, .044658) and c'I = 2.577350.
 */
import { describe, expect, it } from 'vitest';
import { contributionsWithinKinship, optimalContributions } from '../../graph/choice/index.ts';

const merit = [3, 2, 1];
const kinship = [0.5, 0, 0, 0, 0.5, 0, 0, 0, 0.5];

describe('optimal contributions, against the closed form', () => {
  it('at lambda = sqrt 3 are 1/3 + (I - 2)/(2 sqrt 3)', () => {
    const found = optimalContributions({ merit, kinship }, Math.sqrt(3));
    if (!found.ok) throw new Error(found.found);
    [3, 2, 1].forEach((index, k) => {
      expect(found.shares[k]).toBeCloseTo(1 / 3 + (index - 2) / (2 * Math.sqrt(3)), 12);
    });
    expect(found.groupKinship).toBeCloseTo(0.25, 12);
    expect(found.converged).toBe(true);
  });

  it("under the limit c'c = 1/2 are (.622008, .333333, .044658) and gain 2.577350", () => {
    const found = contributionsWithinKinship({ merit, kinship }, 0.25);
    if (!found.ok) throw new Error(found.found);
    [0.622008, 0.333333, 0.044658].forEach((share, k) => {
      expect(found.shares[k]).toBeCloseTo(share, 6);
    });
    expect(found.gain).toBeCloseTo(2.57735, 5);
  });
});
