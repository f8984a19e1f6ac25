import { describe, expect, it } from 'vitest';
import type { Relation, RelationCode } from '../../../../graph/lineage/relation.ts';
import { winterYears } from '../../../../src/journal/day-words.ts';
import type { QueenId } from '../../../../src/journal/ids.ts';
import { besides, ended, hangsOn, linesLead, survived } from '../../../../views/lines/line-words.ts';
import {
  kinshipSentence,
  relationCertainty,
  relationSentence,
} from '../../../../views/lines/relation-words.ts';
import type { LineSummary } from '../../../../views/lines/summaries.ts';
import { fitText, textWidth } from '../../../../views/lines/text-width.ts';
import { wintersText } from '../../../../views/lines/words.ts';

const names = { first: 'Alder', second: 'Birch', commonDam: 'Elm' };
const relation = (code: RelationCode, more: Partial<Relation> = {}): Relation => ({
  code,
  probability: 1,
  sameMaking: false,
  sharedDroneSources: [],
  ...more,
});

describe('winters in words', () => {
  it('are named by both years', () => {
    expect(winterYears(2026)).toBe('2025/26');
    expect(winterYears(2000)).toBe('1999/00');
  });

  it('are joined to a span when they follow one another', () => {
    expect(wintersText([2024])).toBe('winter 2023/24');
    expect(wintersText([2024, 2025])).toBe('winters 2023/24, 2024/25');
    expect(wintersText([2023, 2024, 2025])).toBe('winters 2022/23 to 2024/25');
    expect(wintersText([2022, 2024, 2025])).toBe('winters 2021/22, 2023/24, 2024/25');
    expect(wintersText([])).toBe('no winter yet');
  });
});

describe('a relation in words', () => {
  it('says what the first is to the second', () => {
    expect(relationSentence(relation('dam'), names)).toBe('Alder is the dam of Birch.');
    expect(relationSentence(relation('sister', { sameMaking: true }), names)).toBe(
      'Alder and Birch are sisters, daughters of Elm, made by the same event.',
    );
    expect(relationSentence(relation('common-dam', { fromFirst: 3, fromSecond: 1 }), names)).toBe(
      'Both go back to Elm: Alder by 3 generations, Birch by 1 generation.',
    );
  });

  it('has words for every relation', () => {
    const codes: RelationCode[] = [
      'self',
      'dam',
      'daughter',
      'granddam',
      'granddaughter',
      'ancestor',
      'descendant',
      'sister',
      'aunt',
      'niece',
      'cousin',
      'common-dam',
      'drone-side',
      'none',
    ];
    const sentences = codes.map((code) =>
      relationSentence(relation(code, { fromFirst: 2, fromSecond: 2 }), names),
    );
    expect(new Set(sentences).size).toBe(codes.length);
  });

  it('says how sure it is, and nothing where there is nothing to be sure of', () => {
    expect(relationCertainty(relation('sister'))).toBe('Every dam on the way is firm.');
    expect(relationCertainty(relation('sister', { probability: 0.63 }))).toContain('63\u00a0%');
    expect(relationCertainty(relation('none'))).toBeUndefined();
  });
});

describe('a kinship in words', () => {
  // Half the relatedness of females: dam and daughter 1/2, sisters by one drone 3/4, by different drones 1/4
  // (haplodiploid relatedness, facts of the trade; derived again in tests/outside).
  it('is measured against pairs that every breeder knows', () => {
    expect(kinshipSentence(0.25)).toContain('About as close as dam and daughter');
    expect(kinshipSentence(0.375)).toContain('About as close as sisters by one drone');
    expect(kinshipSentence(0.125)).toContain('About as close as sisters by different drones');
    expect(kinshipSentence(0.146)).toContain('Closer than sisters by different drones');
  });

  it('is the inbreeding to expect of a daughter of one by a drone of the other', () => {
    expect(kinshipSentence(0.125)).toContain('expected 13\u00a0% inbred');
    expect(kinshipSentence(0.033)).toContain('expected 3.3\u00a0% inbred');
  });

  it('is none to speak of when it is next to nothing', () => {
    expect(kinshipSentence(0.0004)).toContain('unrelated');
  });
});

const line = (facts: Partial<LineSummary>): LineSummary => ({
  line: 'x' as QueenId,
  title: 'Alder',
  named: true,
  letter: 'A',
  hue: 1,
  living: 3,
  livingProbable: 0,
  expected: 0,
  queens: 9,
  unknown: 0,
  since: 0,
  winters: [],
  ...facts,
});

describe('a line in words', () => {
  it('hangs on so many queens', () => {
    expect(hangsOn(line({ living: 3 }))).toBe('Hangs on 3 queens');
    expect(hangsOn(line({ living: 1 }))).toBe('Hangs on one queen');
    expect(hangsOn(line({ living: 0, expected: 2 }))).toBe('No laying queen');
    expect(hangsOn(line({ living: 0 }))).toBe('No queen left');
  });

  it('has not ended while a queen may live of whom another keeper told', () => {
    const told = line({ living: 0, unknown: 1 });
    expect(hangsOn(told)).toBe('No queen in these yards');
    expect(ended(told)).toBe('Where one queen is now is not known');
  });

  it('tells what is only probable and what is awaited', () => {
    expect(besides(line({ livingProbable: 1, expected: 2 }))).toBe('1 of them probably; 2 awaited');
    expect(besides(line({}))).toBe('');
  });

  it('counts a queen once for each winter', () => {
    const winters = [
      { spring: 2025, wentIn: 3, cameOut: 2 },
      { spring: 2026, wentIn: 2, cameOut: 2 },
    ];
    expect(survived(line({ winters }))).toBe('2 winters: 4 of 5 through');
  });

  it('names the line that hangs on one queen under the heading', () => {
    expect(linesLead([line({}), line({ letter: 'B', title: 'Birch', living: 1 })])).toBe(
      '2 lines are alive, on 4 queens. Line B (Birch) hangs on one queen.',
    );
    expect(linesLead([line({ living: 0 })])).toBe('No line has a laying queen.');
  });
});

describe('a text that must fit', () => {
  it('stays whole where there is room and is cut with an ellipsis where there is not', () => {
    expect(fitText('Bryony', 16, 200)).toBe('Bryony');
    const cut = fitText('Bryony of the far meadow', 16, 80);
    expect(cut.endsWith('…')).toBe(true);
    expect(textWidth(cut, 16)).toBeLessThanOrEqual(80);
  });
});
