import type { QueenId } from '../journal/ids.ts';
import type { Registry } from './state.ts';

/**
 * Queens who by their stated parentage descend from themselves. That is always a mistake and always a contradiction,
 * but it may stand (brought in by another keeper, or overruled), and nothing that follows descent may be caught in it:
 * for these queens the graph and the numerics take the dam as unknown. O(contradictions x ancestors).
 */
export function queensInCircles(registry: Registry): ReadonlySet<QueenId> {
  const circles = new Set<QueenId>();
  for (const { code, queen } of registry.contradictions) {
    if (code === 'dam-is-descendant' && queen && isOwnAncestor(registry, queen, circles)) circles.add(queen);
  }
  return circles;
}

/** True when following the dams leads back to her, other than through queens whose circle is cut already. */
function isOwnAncestor(registry: Registry, queen: QueenId, cut: ReadonlySet<QueenId>): boolean {
  const seen = new Set<QueenId>();
  const waiting = damsOf(registry, queen);
  for (let id = waiting.pop(); id; id = waiting.pop()) {
    if (id === queen) return true;
    if (seen.has(id) || cut.has(id)) continue;
    seen.add(id);
    waiting.push(...damsOf(registry, id));
  }
  return false;
}

function damsOf(registry: Registry, queen: QueenId): QueenId[] {
  return (registry.queens.get(queen)?.parentage?.dams ?? []).map((dam) => dam.queen);
}
