import type { QueenId } from '../../journal/ids.ts';
import type { Queen, Registry } from '../../registry/state.ts';

/**
 * A queen and all her ancestors on record: possible dams, and the mothers of drones where a mating names them. Every
 * queen comes after her parents; ties keep the order of record. O(ancestors + their parents); no recursion. A ring of
 * dams (a contradiction that the registry reports) is cut where it closes.
 */
export function withAncestors(registry: Registry, id: QueenId): readonly Queen[] {
  const ordered: Queen[] = [];
  const opened = new Set<QueenId>();
  const closed = new Set<QueenId>();
  const waiting: QueenId[] = [id];
  for (let top = waiting.at(-1); top; top = waiting.at(-1)) {
    const queen = registry.queens.get(top);
    if (!queen || closed.has(top)) {
      waiting.pop();
      continue;
    }
    if (opened.has(top)) {
      waiting.pop();
      closed.add(top);
      ordered.push(queen);
      continue;
    }
    opened.add(top);
    waiting.push(
      ...parentsOf(queen)
        .filter((parent) => !opened.has(parent))
        .reverse(),
    );
  }
  return ordered;
}

/** Possible dams, and the drone mothers that her own mating names. */
function parentsOf(queen: Queen): readonly QueenId[] {
  const dams = (queen.parentage?.dams ?? []).filter(({ probability }) => probability > 0);
  const way = queen.mating?.way;
  const mothers = way && way.manner !== 'open' ? way.droneMothers : [];
  return [...dams.map((dam) => dam.queen), ...mothers.map((mother) => mother.queen)];
}
