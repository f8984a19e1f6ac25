import { describe, expect, it } from 'vitest';
import type { GroupSummary } from '../../../../graph/merit/comparison-groups.ts';
import type { TraitEvaluation } from '../../../../graph/merit/evaluate.ts';
import type { SetAside } from '../../../../graph/merit/trait-record.ts';
import { evidenceOf, evidenceWords } from '../../../../views/choose/evidence.ts';
import {
  ASIDE_WORDS,
  asideByReason,
  bySentence,
  groundWords,
  groupsWords,
  sourceWord,
} from '../../../../views/choose/grounds.ts';
import { demoEvaluated, demoRow } from '../../../helpers/demo-choice.ts';

const group = (name: string, season: number, queens: number): GroupSummary => ({
  group: `${name} / ${season} / wash`,
  yard: name,
  season,
  records: queens,
  queens,
  small: queens < 5,
});

const aside = (code: SetAside['code'], day: number, sentence = ''): SetAside => ({
  trait: 'mite-level',
  code,
  sentence,
  observations: [`o${day}`],
  colony: 'c',
  day,
  season: 2025,
});

describe('the ground of a trait', () => {
  const evaluation = {
    records: [1, 2, 3],
    groups: [group('Home', 2024, 7), group('Away', 2025, 2), group('Home', 2025, 6)],
    setAside: [aside('treatment-acting', 1)],
    variancesFrom: 'published-scaled',
    warnings: [],
  } as unknown as TraitEvaluation;

  it('is records, comparison groups, how many are small, and what was set aside', () => {
    expect(groundWords(evaluation)).toBe('3 records in 3 comparison groups, 1 of them small; 1 set aside');
    expect(groundWords({ ...evaluation, records: [], setAside: [] })).toBe('Nothing to compare');
    expect(groundWords({ ...evaluation, groups: [group('Away', 2025, 2)], setAside: [] })).toBe(
      '3 records in 1 comparison group, all small',
    );
  });

  it('lists the groups by season, latest first, with what else is alike in them', () => {
    expect(groupsWords(evaluation, (yard) => yard)).toEqual([
      { season: 2025, words: 'Away by wash, 2 queens (small); Home by wash, 6 queens' },
      { season: 2024, words: 'Home by wash, 7 queens' },
    ]);
  });

  it('says in a word where its variances come from', () => {
    expect(sourceWord(evaluation)).toBe('published variances');
    expect(sourceWord({ ...evaluation, warnings: ['assumed-variances'] })).toBe('assumed variances');
    expect(sourceWord({ ...evaluation, variancesFrom: 'own' })).toBe('own variances');
  });
});

describe('records set aside', () => {
  it('stand by reason, the most frequent first, each reason’s latest first', () => {
    const all = [aside('group-of-one', 5), aside('after-treatment', 1), aside('after-treatment', 3)];
    expect(asideByReason(all).map(({ code, records }) => [code, records.map(({ day }) => day)])).toEqual([
      ['after-treatment', [3, 1]],
      ['group-of-one', [5]],
    ]);
  });

  it('say a sentence that they share only once', () => {
    const all = [
      aside('after-treatment', 3, 'Too soon.'),
      aside('after-treatment', 1, 'Too soon.'),
      aside('after-treatment', 2, 'Next day.'),
    ];
    expect(bySentence(all).map(({ sentence, records }) => [sentence, records.length])).toEqual([
      ['Too soon.', 2],
      ['Next day.', 1],
    ]);
  });

  it('have words for each reason of the demo', () => {
    const reasons = demoEvaluated().answer.evaluation.traits.flatMap(({ setAside }) =>
      setAside.map(({ code }) => code),
    );
    expect(reasons).not.toEqual([]);
    for (const code of reasons) expect(ASIDE_WORDS[code]).toBeTruthy();
  });
});

describe('what a merit is known from', () => {
  it('is her own winters, yards and daughters with records', () => {
    const gale = evidenceOf(demoEvaluated(), demoRow('Gale').id);
    // Gale of the demo came through three winters; three of her daughters headed colonies that were looked at.
    expect(gale).toMatchObject({ winters: 3, yards: 1, daughters: 3 });
    expect(evidenceWords(gale)).toBe('3 winters, 3 daughters');
  });

  it('is seasons where she has not wintered, and her kin where nothing is hers', () => {
    const nothing = { records: 0, winters: 0, seasons: 0, yards: 0, daughters: 0 };
    expect(evidenceWords(nothing)).toBe('through her kin alone');
    expect(evidenceWords({ ...nothing, records: 2, seasons: 1, yards: 2 })).toBe('1 season, 2 yards');
  });
});
