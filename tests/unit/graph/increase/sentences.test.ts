import { describe, expect, it } from 'vitest';
import { ASSUMPTIONS, type AssumptionName } from '../../../../graph/increase/assumptions.ts';
import { assumptionText, estimateText, roughly, weaknessText } from '../../../../graph/increase/sentences.ts';

describe('figures of the planner in words', () => {
  it('are rounded to two figures', () => {
    expect([12_345, 9876, 456, 12, 2.68].map(roughly)).toEqual(['12,000', '9,900', '460', '12', '2.7']);
  });

  it('carry their range, unless it rounds to nothing', () => {
    expect(estimateText({ low: 4700, likely: 6420, high: 8300 }, 'bees')).toBe(
      'about 6,400 bees (4,700 to 8,300)',
    );
    expect(estimateText({ low: 5, likely: 5, high: 5 }, 'days')).toBe('about 5 days');
  });

  it('say what is weak, what was found, what is asked and what to do', () => {
    const found = { low: 2000, likely: 3000, high: 4000 };
    expect(weaknessText({ part: 0, code: 'too-few-bees', found, asked: 6800 })).toBe(
      'Too few bees stay here once the flying bees have gone home: shake in more, or make fewer parts (about 3,000 ' +
        'bees (2,000 to 4,000); at least 6,800 are asked).',
    );
  });

  it('name value, unit, source and basis of every assumption', () => {
    for (const name of Object.keys(ASSUMPTIONS) as AssumptionName[]) {
      const { low, likely, high, source, basis } = ASSUMPTIONS[name];
      expect(low).toBeLessThanOrEqual(likely);
      expect(likely).toBeLessThanOrEqual(high);
      expect(assumptionText(name)).toContain(source);
      expect(assumptionText(name)).toContain(`[${basis}]`);
    }
  });
});
