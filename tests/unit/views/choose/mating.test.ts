import { describe, expect, it } from 'vitest';
import { runTask } from '../../../../src/workers/run-task.ts';
import { type MatingQuestion, matingWork, questionWords, spreadOf } from '../../../../views/choose/mating.ts';
import { demoEvaluated, demoName, demoRanking, demoRow, demoYardName } from '../../../helpers/demo-choice.ts';
import { denseRelationship } from '../../../helpers/dense-relationship.ts';

const evaluated = demoEvaluated();
const ranking = demoRanking();
const sallowBank = evaluated.work.yards.find(({ yard }) => demoYardName(yard) === 'Sallow Bank')?.yard;
const brook = demoRow('Brook');
const bora = demoRow('Bora');

const asked = (change: Partial<MatingQuestion> = {}): MatingQuestion => ({
  dam: brook.id,
  manner: 'yard',
  yard: sallowBank,
  movedIn: [],
  movedShare: 0.5,
  donors: [],
  singleDrone: false,
  ...change,
});

function outlook(change: Partial<MatingQuestion> = {}) {
  const work = matingWork(evaluated, ranking, asked(change));
  const answer = work && runTask('mating', work);
  if (!answer) throw new Error('Nothing was asked.');
  return answer;
}

describe('the question of a mating', () => {
  it('is asked in the words of the yard', () => {
    const words = (change: Partial<MatingQuestion>) => questionWords(asked(change), demoName, demoYardName);
    expect(words({})).toBe('A daughter of Brook flown at Sallow Bank');
    expect(words({ movedIn: [bora.id] })).toBe(
      'A daughter of Brook flown at Sallow Bank, with drones of Bora moved in',
    );
    expect(words({ manner: 'inseminated' })).toBe('A daughter of Brook, inseminated');
    expect(words({ manner: 'inseminated', donors: [bora.id], singleDrone: true })).toBe(
      'A daughter of Brook, inseminated by one drone of Bora',
    );
  });

  it('is not put while the donors are missing, or the yard has no drones', () => {
    expect(matingWork(evaluated, ranking, asked({ manner: 'inseminated' }))).toBeUndefined();
    expect(matingWork(evaluated, ranking, asked({ yard: undefined }))).toBeUndefined();
  });

  it('asks for no merit where every trait is left out', () => {
    expect(matingWork(evaluated, { ...ranking, weighed: false }, asked())).not.toHaveProperty('merit');
  });
});

describe('the answer', () => {
  it('agrees with the table of yards', () => {
    const listed = evaluated.answer.yards.find(({ yard }) => yard === sallowBank)?.daughters[brook.place];
    expect(outlook().broodInbreeding).toBeCloseTo(listed?.broodInbreeding ?? Number.NaN, 12);
  });

  it('for a daughter inseminated by her brothers is their kinship by the tabular method, a quarter and more', () => {
    const dense = denseRelationship(evaluated.work.pedigree);
    const dam = `queen:${brook.id}`;
    const expected = (dense.at(dam, dam) + dense.at(`mates:${brook.id}`, dam)) / 4;
    const { broodInbreeding } = outlook({ manner: 'inseminated', donors: [brook.id] });
    expect(broodInbreeding).toBeCloseTo(expected, 10);
    // Brother and sister out of unrelated parents: 1/4 (Crow & Roberts 1950, Genetics 35:612, from memory).
    expect(broodInbreeding).toBeGreaterThanOrEqual(0.25);
  });

  it('for drones moved in lies between the yard and those drones alone, by their share', () => {
    const there = outlook().broodInbreeding;
    const alone = outlook({ manner: 'inseminated', donors: [bora.id] }).broodInbreeding;
    const mixed = outlook({ movedIn: [bora.id], movedShare: 0.3 }).broodInbreeding;
    expect(mixed).toBeCloseTo(0.7 * there + 0.3 * alone, 10);
    expect(outlook({ movedIn: [bora.id], movedShare: 0 }).broodInbreeding).toBeCloseTo(there, 12);
  });

  it('has the dam’s daughter halfway between the dam and the drones the dam met', () => {
    const { queenMerit } = outlook();
    const other = outlook({ manner: 'inseminated', donors: [bora.id] }).queenMerit;
    // Whom the daughter meets does not change what she is.
    expect(queenMerit?.mean).toBeCloseTo(other?.mean ?? Number.NaN, 12);
    expect(Math.abs((queenMerit?.mean ?? 0) - brook.merit)).toBeLessThan(Math.abs(brook.merit));
  });

  it('has a spread of chance and doubt together, and of chance alone where the doubt is not known', () => {
    const { broodMerit } = outlook();
    const { betweenSisters = 0, standardError = 0, spread = 0 } = broodMerit ?? {};
    expect(spread ** 2).toBeCloseTo(betweenSisters ** 2 + standardError ** 2, 10);
    expect(spreadOf({ mean: 0, betweenSisters: 0.3 })).toBe(0.3);
    expect(spreadOf({ mean: 0, betweenSisters: 0.3, standardError: 0.4, spread: 0.5 })).toBe(0.5);
  });

  it('varies more between broods by the semen of one drone of each than of many', () => {
    const many = outlook({ manner: 'inseminated', donors: [bora.id] });
    const one = outlook({ manner: 'inseminated', donors: [bora.id], singleDrone: true });
    expect(one.broodMerit?.betweenSisters).toBeGreaterThan(many.broodMerit?.betweenSisters ?? 0);
    expect(one.broodInbreeding).toBeCloseTo(many.broodInbreeding, 12);
  });
});
