import { RoughDay } from '../../src/journal/day.ts';
import type { MarkColour } from '../../src/journal/entries/queen.ts';
import type { Draft } from '../../src/journal/entry.ts';
import type { Evidence } from '../../src/journal/entry-parts.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { newQueenId } from '../../src/journal/new-ids.ts';
import { parentageFor, type Sureness } from '../queen/parentage-choice.ts';

/** What is said of the queen of a colony that begins. */
export interface FirstQueenFacts {
  readonly there?: 'laying' | 'not-laying' | 'not-known' | undefined;
  readonly name: string;
  readonly year: string;
  readonly background: string;
  readonly colour?: MarkColour | undefined;
  readonly mark: string;
  /** A queen on record; absent where her dam is not known or not on record. */
  readonly dam?: QueenId | undefined;
  readonly damSure?: Sureness | undefined;
  readonly damKnown?: Evidence | undefined;
}

export const NO_QUEEN: FirstQueenFacts = { name: '', year: '', background: '', mark: '' };

/** What is wrong with what was said of her; nothing where she may be written down. */
export function queenProblem(facts: FirstQueenFacts): string | undefined {
  return yearProblem(facts) ?? damProblem(facts);
}

/** What is wrong with the day on which she emerged. */
export function yearProblem(facts: FirstQueenFacts): string | undefined {
  const year = facts.year.trim();
  if (!isThere(facts) || year === '' || RoughDay.safeParse(year).success) return undefined;
  return 'Write a year, a month or a day: 2024, 2024-06 or 2024-06-14.';
}

/** What is still to be said of the dam that was named. */
export function damProblem(facts: FirstQueenFacts): string | undefined {
  if (!isThere(facts) || !facts.dam || (facts.damSure && facts.damKnown)) return undefined;
  return 'Say how sure her dam is and how it is known, or choose that she is not known.';
}

function isThere({ there }: FirstQueenFacts): boolean {
  return there === 'laying' || there === 'not-laying';
}

/** The entries that bring the queen in; none when she is not known. */
export function queenDrafts(facts: FirstQueenFacts, colony: ColonyId, day: RoughDay): readonly Draft[] {
  if (!isThere(facts)) return [];
  const { dam, damSure: sure, damKnown: evidence } = facts;
  const born = RoughDay.safeParse(facts.year.trim());
  return [
    {
      kind: 'queen-entered',
      day,
      queen: newQueenId(),
      colony,
      laying: facts.there === 'laying',
      ...(facts.name.trim() ? { name: facts.name.trim() } : {}),
      ...(born.success ? { born: born.data } : {}),
      ...(dam && sure && evidence
        ? { parentage: parentageFor({ dam, other: undefined, sure, evidence }) }
        : {}),
      ...(facts.background.trim() ? { background: facts.background.trim() } : {}),
      ...(facts.colour ? { colour: facts.colour } : {}),
      ...(facts.mark.trim() ? { mark: facts.mark.trim() } : {}),
    },
  ];
}
