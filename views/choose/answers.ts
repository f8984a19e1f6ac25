import { count } from '../parts/words.ts';
import { type Breeder, linesKept, type Plan } from './plan.ts';
import type { Ranking } from './ranking.ts';
import type { Choice, Curve } from './use-choice.ts';
import { someOf } from './words.ts';
import { yardRisks } from './yard-risk.ts';

/** Each question of the screen answered in a line, before it is opened. */

/** "12 daughters from 5 queens; 2 of 4 lines go on." */
export function daughtersAnswer(
  ranking: Ranking,
  plan: Pick<Plan, 'dams' | 'daughters'> | undefined,
  curve: Curve | undefined,
): string {
  if (curve?.is === 'impossible') return curve.why.found;
  if (curve?.is === 'failed') return 'The curve could not be worked out.';
  if (!plan) return 'Being worked out.';
  const kept = linesKept(ranking, plan);
  const going = kept.filter(({ daughters }) => daughters > 0).length;
  const from = `${count(plan.daughters, 'daughter')} from ${count(plan.dams.length, 'queen')}`;
  return `${from}; ${going} of ${count(kept.length, 'living line')} ${going === 1 ? 'goes' : 'go'} on.`;
}

const MOST_NAMED = 5;

/** Whose daughters would meet close kin, and where. */
export function brothersAnswer({
  evaluated,
  breeders,
  yards,
  nameOf,
  yardName,
}: Pick<Choice, 'evaluated' | 'yards' | 'nameOf' | 'yardName'> & {
  readonly breeders: readonly Breeder[];
}): string {
  const close = new Map<string, string[]>();
  for (const { row } of breeders) {
    for (const { yard, closeness } of yardRisks(evaluated, row.place)) {
      if (closeness !== 'closely' || !yards.has(yard)) continue;
      close.set(yardName(yard), [...(close.get(yardName(yard)) ?? []), nameOf(row.id)]);
    }
  }
  if (breeders.length === 0) return 'No queen is in the choice.';
  if (close.size === 0) return 'No daughter would meet close kin at any of your yards.';
  const parts = [...close].map(([yard, names]) => `daughters of ${someOf(names, MOST_NAMED)} at ${yard}`);
  return `Close kin would meet: ${parts.join('; ')}. Fly those elsewhere.`;
}
