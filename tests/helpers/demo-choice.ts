import type { KeeperId, QueenId } from '../../src/journal/ids.ts';
import { evaluationWork } from '../../src/registry/evaluation.ts';
import { yardsOf } from '../../src/registry/queries.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import { Choosing, DEFAULT_SETTINGS } from '../../src/store/settings.ts';
import { SUGGESTED_WEIGHTS } from '../../src/store/trait-weights.ts';
import { evaluateWork } from '../../src/workers/evaluate.ts';
import { type Candidate, type Ranking, rankingOf } from '../../views/choose/ranking.ts';
import { DEMO_DAY, demoEntries, demoRegistry } from './demo.ts';

/** The demo yard evaluated once for all tests, as the screen gets it from the store. */

let evaluated: Evaluated | undefined;

export function demoEvaluated(): Evaluated {
  if (evaluated) return evaluated;
  const registry = demoRegistry();
  const work = evaluationWork(registry, DEMO_DAY, { sexAlleles: DEFAULT_SETTINGS.sexAlleles });
  const answer = evaluateWork(work);
  if (!answer) throw new Error('The evaluation of the demo yard was stopped.');
  evaluated = { registry, on: DEMO_DAY, assumed: '', work, answer };
  return evaluated;
}

/** The keeper whose yards the demo shows. */
export function demoKeeper(): KeeperId {
  const [first] = demoEntries();
  if (!first) throw new Error('The demo yard is empty.');
  return first.recordedBy;
}

export const demoYards = () => yardsOf(demoRegistry(), demoKeeper());

export const demoRanking = (weights = SUGGESTED_WEIGHTS): Ranking =>
  rankingOf(demoEvaluated(), weights, demoKeeper());

/** The row of the queen of this name. */
export function demoRow(name: string, { rows }: Ranking = demoRanking()): Candidate {
  const row = rows.find(({ queen }) => queen.name === name);
  if (!row) throw new Error(`No laying queen of the demo yard is called ${name}.`);
  return row;
}

export const demoChoosing = (change: Partial<Choosing> = {}): Choosing => ({
  ...Choosing.parse({}),
  ...change,
});

export const demoName = (id: QueenId): string => demoRegistry().queens.get(id)?.name ?? id;

export const demoYardName = (id: string): string =>
  [...demoRegistry().yards.values()].find((yard) => yard.id === id)?.name ?? id;
