import { describe, expect, it } from 'vitest';
import {
  agrees,
  emptyNetwork,
  follows,
  rangeOf,
  tighten,
  withBounds,
} from '../../../../graph/calendar/network.ts';

/** Three days: 1 is on day 10..12, 2 follows it by 3..4 days, 3 follows 2 by exactly 5. */
function chain() {
  const network = emptyNetwork(4);
  for (const bound of [
    { from: 0, to: 1, max: 12 },
    { from: 1, to: 0, max: -10 },
    { from: 1, to: 2, max: 4 },
    { from: 2, to: 1, max: -3 },
    { from: 2, to: 3, max: 5 },
    { from: 3, to: 2, max: -5 },
  ]) {
    expect(tighten(network, bound)).toBe(true);
  }
  return network;
}

describe('a network of difference constraints', () => {
  it('carries bounds along the chain', () => {
    const network = chain();
    expect(rangeOf(network, 2)).toEqual({ earliest: 13, latest: 16 });
    expect(rangeOf(network, 3)).toEqual({ earliest: 18, latest: 21 });
  });

  it('carries a later bound back to the start', () => {
    const network = withBounds(chain(), [{ from: 0, to: 3, max: 18 }])!;
    expect(rangeOf(network, 1)).toEqual({ earliest: 10, latest: 10 });
  });

  it('refuses a bound that contradicts it and stays as it was', () => {
    const network = chain();
    const impossible = { from: 0, to: 3, max: 17 };
    expect(agrees(network, impossible)).toBe(false);
    expect(tighten(network, impossible)).toBe(false);
    expect(rangeOf(network, 3)).toEqual({ earliest: 18, latest: 21 });
    expect(withBounds(network, [impossible])).toBeUndefined();
  });

  it('knows which bounds already follow', () => {
    expect(follows(chain(), { from: 1, to: 3, max: 9 })).toBe(true);
    expect(follows(chain(), { from: 1, to: 3, max: 8 })).toBe(false);
  });
});
