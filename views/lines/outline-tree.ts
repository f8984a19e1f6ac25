import type { QueenId } from '../../src/journal/ids.ts';
import type { Life } from './lives.ts';

/** The lines as nested lists: the twin of the drawing for reading, for screen readers and for paper. */
export interface Branch {
  readonly life: Life;
  /** Daughters by their first day, eldest first. */
  readonly daughters: readonly Branch[];
}

/** The branches of one line, from its founder, or from each queen whose dam is left out. */
export function branchesOf(lives: readonly Life[], line: QueenId): readonly Branch[] {
  const members = lives.filter((life) => life.line === line);
  const here = new Set(members.map(({ id }) => id));
  const below = new Map<QueenId, Branch[]>();
  const roots: Branch[] = [];
  for (const life of members.toReversed()) {
    const daughters = (below.get(life.id) ?? []).sort(byDay);
    const branch = { life, daughters };
    if (life.dam === undefined || !here.has(life.dam)) roots.push(branch);
    else below.set(life.dam, [...(below.get(life.dam) ?? []), branch]);
  }
  return roots.sort(byDay);
}

function byDay(a: Branch, b: Branch): number {
  return a.life.start - b.life.start || (a.life.id < b.life.id ? -1 : 1);
}
