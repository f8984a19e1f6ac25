import { describe, expect, it } from 'vitest';
import { lookAhead } from '../../../../graph/choice/look-ahead/look-ahead.ts';
import { project } from '../../../../src/registry/project.ts';
import { breedersOf } from '../../../../views/choose/plan.ts';
import {
  cameToLay,
  lookAheadWork,
  ownDronesOf,
  problemWords,
  startWords,
  usualPolicy,
} from '../../../../views/choose/policy.ts';
import { demoChoosing, demoEvaluated, demoRanking, demoYards } from '../../../helpers/demo-choice.ts';
import { Story } from '../../../helpers/story.ts';

const evaluated = demoEvaluated();
const ranking = demoRanking();
const choosing = demoChoosing();
const breeders = breedersOf(evaluated, ranking, choosing, demoYards());
const policy = usualPolicy(evaluated, ranking, breeders, choosing, ownDronesOf(evaluated, demoYards()));

describe('the policy to start with', () => {
  it('is what the records tell of the keeper’s own way', () => {
    expect(policy).toMatchObject({ colonies: 9, breeders: 3, daughtersEach: 4, mates: 12 });
    // Own shares said in the demo for 2026: 35 % at Sallow Bank, 70 % at High Fallow.
    expect(ownDronesOf(evaluated, demoYards())).toBeCloseTo((0.35 + 0.7) / 2, 12);
    const winters =
      evaluated.answer.evaluation.traits.find(({ trait }) => trait === 'winter-survival')?.records ?? [];
    const lost = winters.filter(({ value }) => value === 0).length / winters.length;
    expect(Math.abs(policy.winterLoss - lost)).toBeLessThanOrEqual(0.025 + 1e-9);
  });

  it('says on how many records its shares rest', () => {
    expect(startWords(evaluated)).toMatch(
      /of \d+ queens raised \d+\u00a0% came to lay; of \d+ winters \d+\u00a0% were lost/,
    );
  });

  it('assumes and says so where the records are too few', () => {
    const story = new Story();
    story.begin('Home', '2024-04-01', { H1: 'Alder' });
    const registry = project(story.journal());
    expect(cameToLay(registry)).toBe(0.5);
    const few = {
      ...evaluated,
      registry,
      answer: { ...evaluated.answer, evaluation: { traits: [] } },
    } as never;
    expect(startWords(few)).toContain('that 50\u00a0% of queens raised come to lay is assumed');
    expect(startWords(few)).toContain('that 25\u00a0% of colonies are lost in winter is assumed');
  });
});

describe('the question to the look-ahead', () => {
  it('has the queens in the choice as founders, with their kinship and their doubt', () => {
    const work = lookAheadWork(evaluated, ranking, breeders, { policy, seasons: 2 });
    expect(work.founders).toHaveLength(breeders.length);
    expect(work.founders[0]).toEqual({
      line: breeders[0]?.row.line,
      merit: breeders[0]?.row.merit,
      errorVariance: (breeders[0]?.row.error ?? 0) ** 2,
    });
    expect(Array.from(work.founderKinship ?? [])).toHaveLength(breeders.length ** 2);
    const answer = lookAhead({ ...work, replicates: 20 });
    if (!answer.ok) throw new Error(answer.code);
    expect(answer.seasons.map(({ season }) => season)).toEqual([0, 1, 2]);
    expect(answer.seasons[0]?.lines.median).toBe(new Set(breeders.map(({ row }) => row.line)).size);
    // At the start nothing is gained yet, and every founder is as inbred as she is.
    expect(answer.seasons[0]?.gain).toMatchObject({ low: 0, median: 0, high: 0 });
  });

  it('knows of no merit where every trait is left out', () => {
    const work = lookAheadWork(evaluated, { ...ranking, weighed: false }, breeders, { policy, seasons: 2 });
    expect(work.founders.every((founder) => !('merit' in founder))).toBe(true);
  });

  it('that is too much to play is named as the form names it', () => {
    const work = lookAheadWork(evaluated, ranking, breeders, {
      policy: { ...policy, colonies: 200 },
      seasons: 30,
    });
    const answer = lookAhead(work);
    if (answer.ok || answer.code !== 'problems') throw new Error('It was played.');
    expect(answer.problems.map(problemWords).join()).toMatch(/^Colonies kept: 200\. With 30 seasons/);
  });
});
