import { describe, expect, it } from 'vitest';
import { brothersAnswer, daughtersAnswer } from '../../../../views/choose/answers.ts';
import { comparisonRows, verdictWords } from '../../../../views/choose/comparison.ts';
import { breedersOf, planOf } from '../../../../views/choose/plan.ts';
import type { Choice } from '../../../../views/choose/use-choice.ts';
import { lineFacts } from '../../../../views/lines/facts.ts';
import {
  demoChoosing,
  demoEvaluated,
  demoName,
  demoRanking,
  demoRow,
  demoYardName,
  demoYards,
} from '../../../helpers/demo-choice.ts';

const evaluated = demoEvaluated();
const ranking = demoRanking();
const choosing = demoChoosing();
const yards = demoYards();
const breeders = breedersOf(evaluated, ranking, choosing, yards);
/** Half from the first in the choice, half from the fourth. */
const shares = breeders.map((_, k) => (k === 0 || k === 3 ? 0.5 : 0));
const plan = planOf(evaluated, ranking, breeders, shares, demoChoosing({ mostEach: 6 }));
const choice = {
  evaluated,
  ranking,
  choosing,
  yards,
  breeders,
  plan,
  lines: lineFacts(evaluated.registry, evaluated.on),
  nameOf: demoName,
  yardName: demoYardName,
} as unknown as Choice;

describe('the questions of the screen, answered in a line', () => {
  it('say how many daughters from how many queens, and which lines go on', () => {
    expect(daughtersAnswer(ranking, plan, undefined)).toBe(
      '12 daughters from 2 queens; 2 of 4 living lines go on.',
    );
  });

  it('say why there is no plan', () => {
    expect(daughtersAnswer(ranking, undefined, undefined)).toBe('Being worked out.');
    expect(daughtersAnswer(ranking, undefined, { is: 'failed', problem: '' })).toBe(
      'The curve could not be worked out.',
    );
    const why = { ok: false, found: 'No queen is among the candidates.', remedy: '' } as never;
    expect(daughtersAnswer(ranking, undefined, { is: 'impossible', why })).toBe(
      'No queen is among the candidates.',
    );
  });

  it('name whose daughters would meet close kin, at the yards of the keeper', () => {
    expect(brothersAnswer(choice)).toBe(
      'Close kin would meet: daughters of Brook, Beck and Bora at High Fallow. Fly those elsewhere.',
    );
    expect(
      brothersAnswer({ ...choice, breeders: breeders.filter(({ row }) => row.queen.name === 'Ford') }),
    ).toBe('No daughter would meet close kin at any of your yards.');
    expect(brothersAnswer({ ...choice, breeders: [] })).toBe('No queen is in the choice.');
  });
});

describe('queens side by side', () => {
  const three = [demoRow('Brook'), demoRow('Gale'), demoRow('Ford')];
  const rows = comparisonRows(choice, three);
  const cells = (label: string) =>
    rows.find((row) => row.label === label)?.cells.map(({ words }) => words) ?? [];

  it('that cannot be told apart are said so', () => {
    expect(verdictWords(choice, three)).toBe('Brook, Gale and Ford cannot be told apart on these records.');
  });

  it('that can are told with the chance that it is true', () => {
    expect(verdictWords(choice, [demoRow('Clover'), demoRow('Brook')]).replaceAll('\u00a0', ' ')).toMatch(
      /^Brook is truly better than Clover: [89] in 10\.$/,
    );
  });

  it('of whom one was compared with too few are not ranked with her', () => {
    expect(verdictWords(choice, [demoRow('Brook'), demoRow('Umber')])).toBe(
      'Umber is not ranked: compared with too few.',
    );
  });

  it('have a cell each in every row, and the same kinship from both sides', () => {
    for (const row of rows) expect(row.cells).toHaveLength(3);
    const [brook, gale] = cells('Kinship with the others');
    expect(brook?.match(/Gale (\S+)/)?.[1]).toBe(gale?.match(/Brook (\S+)/)?.[1]);
    expect(cells('Daughters planned')).toEqual(['6 daughters', 'no daughter', '6 daughters']);
    expect(cells('Line')).toEqual(['Hazel', 'Hazel', 'Sorrel']);
  });

  it('have chances to be the better that sum to one for each pair', () => {
    const tenths = (words: string | undefined, name: string) =>
      Number(words?.replaceAll('\u00a0', ' ').match(new RegExp(`than ${name} (\\d) in 10`))?.[1]);
    const better = cells('Truly the better');
    expect(tenths(better[0], 'Ford') + tenths(better[2], 'Brook')).toBe(10);
  });
});
