import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { comingText } from '../parts/queen-words.ts';
import { lowerFirst } from '../parts/words.ts';

/**
 * The queens expected in one box, each in words that no other of them has: "A daughter of Hazel, raised in a split,
 * 10 May". Of those made alike on one day, of one dam, the records tell no more than that they are several.
 */
export function whichWords(
  queens: readonly QueenId[],
  registry: Registry,
  on: PlainDay,
): readonly { readonly id: QueenId; readonly words: string }[] {
  const told = queens.map((id) => ({ id, words: wordsFor(id, registry, on) }));
  return told.map(({ id, words }) => {
    const alike = told.filter((other) => other.words === words);
    const place = alike.findIndex((other) => other.id === id) + 1;
    return { id, words: alike.length > 1 ? `${words}: ${place} of ${alike.length}` : words };
  });
}

function wordsFor(id: QueenId, registry: Registry, on: PlainDay): string {
  const queen = registry.queens.get(id);
  if (!queen) return 'A queen not in these records';
  const dam = queen.parentage?.dams[0];
  const damRecord = dam && registry.queens.get(dam.queen);
  const who = damRecord && !queen.name ? `A daughter of ${queenTitle(damRecord)}` : queenTitle(queen);
  const coming = comingText(queen, registry, on);
  return coming ? `${who}, ${lowerFirst(coming)}` : who;
}
