import type { PlainDay } from '../../src/journal/day.ts';
import { colonyOfQueen, labelOn, queenTitle } from '../../src/registry/queries.ts';
import type { Queen, Registry } from '../../src/registry/state.ts';

export interface FoundQueen {
  readonly queen: Queen;
  readonly title: string;
  /** Her year, and where she is or that she is gone: what tells namesakes apart. */
  readonly about: string;
}

/**
 * Queens whose name, number or year begins like the words looked for: by name before the others, then those alive. Nothing looked for: all.
 * O(queens log queens).
 */
export function findQueens(registry: Registry, text: string, on: PlainDay): readonly FoundQueen[] {
  const wanted = plain(text).split(' ').filter(Boolean);
  const found: (FoundQueen & { readonly rank: number })[] = [];
  for (const queen of registry.queens.values()) {
    const title = queenTitle(queen);
    const about = aboutQueen(registry, queen, on);
    const words = plain(`${title} ${queen.mark?.number ?? ''} ${about}`).split(' ');
    if (!wanted.every((each) => words.some((word) => word.startsWith(each)))) continue;
    // Who is called so stands before those of whom a box or a year is.
    const called = wanted.length > 0 && plain(title).startsWith(wanted.join(' '));
    found.push({ queen, title, about, rank: rankOf(queen) - (called ? 10 : 0) });
  }
  return found.sort(
    (a, b) =>
      a.rank - b.rank ||
      a.title.localeCompare(b.title, 'en', { numeric: true }) ||
      (a.queen.id < b.queen.id ? -1 : 1),
  );
}

/** Laying queens first, those awaited next, those gone last; among each, the named before the unnamed. */
function rankOf({ state, name }: Queen): number {
  const life = state.is === 'laying' ? 0 : state.is === 'expected' ? 2 : 4;
  return life + (name ? 0 : 1);
}

function aboutQueen(registry: Registry, queen: Queen, on: PlainDay): string {
  const year = queen.born?.last.slice(0, 4);
  const colony = colonyOfQueen(registry, queen, on);
  const expected = queen.expectedIn && registry.colonies.get(queen.expectedIn);
  const place = colony
    ? `heads ${labelOn(colony, on)}`
    : queen.state.is === 'expected' && expected
      ? `awaited in ${labelOn(expected, on)}`
      : queen.state.is === 'failed'
        ? 'came to nothing'
        : queen.state.is === 'unknown'
          ? 'place not known'
          : 'no longer here';
  return [queen.name ? year : undefined, place].filter(Boolean).join(', ');
}

function plain(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
