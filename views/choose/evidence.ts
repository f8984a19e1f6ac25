import { groupBy } from '../../graph/grouping.ts';
import type { TraitRecord } from '../../graph/merit/trait-record.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import { count } from '../parts/words.ts';

/** What a queen's merit is known from: records of her own colonies, and those of her daughters' colonies. */
export interface Evidence {
  /** Records that count, over all traits. */
  readonly records: number;
  readonly winters: number;
  readonly seasons: number;
  readonly yards: number;
  /** Daughters with records of their own. */
  readonly daughters: number;
}

const byQueen = new WeakMap<Evaluated['answer'], ReadonlyMap<string, readonly TraitRecord[]>>();

function recordsByQueen({ answer }: Evaluated): ReadonlyMap<string, readonly TraitRecord[]> {
  const known = byQueen.get(answer);
  if (known) return known;
  const all = answer.evaluation.traits.flatMap(({ records }) => records);
  const records = groupBy(all, ({ queen }) => queen);
  byQueen.set(answer, records);
  return records;
}

export function evidenceOf(evaluated: Evaluated, queen: QueenId): Evidence {
  const records = recordsByQueen(evaluated);
  const own = records.get(queen) ?? [];
  const daughters = evaluated.registry.queens.get(queen)?.daughters ?? [];
  return {
    records: own.length,
    winters: new Set(own.filter(({ trait }) => trait === 'winter-survival').map(({ season }) => season)).size,
    seasons: new Set(own.map(({ season }) => season)).size,
    yards: new Set(own.map(({ yard }) => yard)).size,
    daughters: daughters.filter((id) => records.has(id)).length,
  };
}

/** "2 winters, 2 yards, 4 daughters"; "her kin alone" where nothing is her own. */
export function evidenceWords({ records, winters, seasons, yards, daughters }: Evidence): string {
  if (records === 0 && daughters === 0) return 'through her kin alone';
  return [
    ...(winters > 0 ? [count(winters, 'winter')] : []),
    ...(seasons > 0 && winters === 0 ? [count(seasons, 'season')] : []),
    ...(yards > 1 ? [count(yards, 'yard')] : []),
    ...(daughters > 0 ? [count(daughters, 'daughter')] : []),
  ].join(', ');
}
