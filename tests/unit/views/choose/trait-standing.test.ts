import { describe, expect, it } from 'vitest';
import { TRAITS } from '../../../../graph/merit/traits/all-traits.ts';
import {
  effectWords,
  standingWords,
  traitStandings,
  variancesWords,
  warningWords,
} from '../../../../views/choose/trait-standing.ts';
import { demoEvaluated, demoRanking, demoRow } from '../../../helpers/demo-choice.ts';

describe('a breeding value as a keeper says it', () => {
  it('turns logarithms into percents and shares into winters of a hundred', () => {
    expect(effectWords('winter-survival', 0.084)).toBe('+8 winters survived in 100');
    // exp(-0.13) = 0.878: 12 % fewer.
    expect(effectWords('mite-level', -0.13)).toBe('−12\u00a0% mites');
    expect(effectWords('gentle', 0.26)).toBe('+0.3 points');
    expect(effectWords('honey', -0.02)).toBe('±0\u00a0kg');
  });

  it('has words for every trait', () => {
    for (const { id } of TRAITS) expect(effectWords(id, 0.1)).not.toBe('');
  });
});

describe('where a queen stands in a trait', () => {
  it('is told in spreads of the starting stock', () => {
    expect(standingWords({ standardised: 1.04 })).toBe('1.0 of a spread better');
    expect(standingWords({ standardised: -0.26 })).toBe('0.3 of a spread worse');
    expect(standingWords({ standardised: 0.04 })).toBe('as the starting stock');
  });

  it('comes with what moves her merit most first, and what is left out last', () => {
    const ranking = demoRanking({ calm: 2, gentle: 1 } as never);
    const standings = traitStandings(demoEvaluated(), demoRow('Ford', ranking));
    const sizes = standings.slice(0, 2).map(({ contribution }) => Math.abs(contribution?.points ?? 0));
    expect(sizes[0]).toBeGreaterThanOrEqual(sizes[1] ?? 0);
    expect(standings.slice(2).every(({ contribution }) => contribution === undefined)).toBe(true);
    expect(standings).toHaveLength(TRAITS.length);
  });
});

describe('what a trait rests on', () => {
  const evaluation = demoEvaluated().answer.evaluation.traits.find(({ trait }) => trait === 'mite-level')!;
  const trait = TRAITS.find(({ id }) => id === 'mite-level')!;

  it('names the source of its variances, and whether it was published', () => {
    const words = variancesWords(evaluation, trait);
    expect(words).toMatch(
      /^Published shares of it, scaled to the spread of your own records\. Between 0\.13/,
    );
    expect(words).toContain('0.44 ± 0.56');
    expect(variancesWords({ ...evaluation, variancesFrom: 'own' }, trait)).toBe(
      'Variances estimated from your own records, as you chose.',
    );
    expect(variancesWords({ ...evaluation, variancesFrom: 'published' }, trait)).toContain(
      'your records are too few to tell it',
    );
  });

  it('warns of groups that are all small', () => {
    expect(warningWords('only-small-groups')).toContain('mostly luck');
  });
});
