import type { PlainDay, RoughDay } from '../../src/journal/day.ts';
import type { Draft, Entry } from '../../src/journal/entry.ts';
import type { Parentage } from '../../src/journal/entry-parts.ts';
import type { ColonyId, EntryId, KeeperId, QueenId, YardId } from '../../src/journal/ids.ts';
import type { Journal } from '../../src/journal/journal.ts';
import { type Scribe, writeEntries } from '../../src/journal/write.ts';

/** Ids that are valid UUIDv7s, rise with the number, and read the same in every run. */
export function testId(number: number): string {
  const hex = number.toString(16).padStart(12, '0');
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-7000-8000-${hex}`;
}

/** A scribe whose clock and ids count up from a seed: no test depends on the day it runs. */
export function testScribe(first = 1, now = '2026-06-01T12:00:00.000Z'): Scribe {
  let next = first;
  return { keeper: testId(0xfff) as KeeperId, now: () => new Date(now), newId: () => testId(next++) };
}

export const day = (text: string) => text as PlainDay;
export const rough = (text: string) => text as RoughDay;

/** Writes stories in the keeper's words: ids by name, one call an entry. */
export class Story {
  readonly entries: Entry[] = [];
  readonly #scribe: Scribe;
  readonly #ids = new Map<string, string>();

  constructor(scribe: Scribe = testScribe()) {
    this.#scribe = scribe;
  }

  #id(kind: string, name: string): string {
    const key = `${kind} ${name}`;
    const known = this.#ids.get(key);
    if (known) return known;
    const made = testId(0x9000_0000 + this.#ids.size);
    this.#ids.set(key, made);
    return made;
  }

  yard = (name: string) => this.#id('yard', name) as YardId;
  colony = (label: string) => this.#id('colony', label) as ColonyId;
  queen = (name: string) => this.#id('queen', name) as QueenId;

  of = (...names: string[]): Parentage => ({
    dams: names.map((name) => ({ queen: this.queen(name), probability: 1 / names.length })),
    evidence: 'eggs-named',
  });

  /** One action of one or more entries; a draft that breaks a schema fails the test at once. */
  write(...drafts: Draft[]): Entry[] {
    return this.writeAs(this.#scribe.keeper, ...drafts);
  }

  /** The same by another keeper. */
  writeAs(keeper: KeeperId, ...drafts: Draft[]): Entry[] {
    const written = writeEntries(drafts, { ...this.#scribe, keeper });
    if (!written.ok) throw new Error(JSON.stringify(written.problems, null, 2));
    this.entries.push(...written.value);
    return written.value;
  }

  withdraw(on: string, ...ids: EntryId[]): Entry[] {
    return this.write({ kind: 'withdrawal', day: rough(on), withdraws: ids });
  }

  journal(): Journal {
    return new Map(this.entries.map((entry) => [entry.id, entry]));
  }

  /** A yard with colonies, each headed by a queen of its own since a day. */
  begin(yard: string, on: string, colonies: Record<string, string>): void {
    this.write({ kind: 'yard-opened', day: rough(on), yard: this.yard(yard), name: yard });
    for (const [label, queen] of Object.entries(colonies)) {
      this.write(
        {
          kind: 'colony-started',
          day: rough(on),
          colony: this.colony(label),
          yard: this.yard(yard),
          label,
          how: 'already-here',
        },
        {
          kind: 'queen-entered',
          day: rough(on),
          queen: this.queen(queen),
          name: queen,
          colony: this.colony(label),
        },
      );
    }
  }

  /** A three-way split: the old queen into `nucleus`, `other` and the source raise their own. */
  threeWaySplit(
    on: string,
    yard: string,
    source: string,
    nucleus: string,
    other: string,
    old: string,
  ): Entry[] {
    const start = (label: string): Draft => ({
      kind: 'colony-started',
      day: rough(on),
      colony: this.colony(label),
      yard: this.yard(yard),
      label,
      how: 'split',
    });
    const raises = (label: string) => ({
      colony: this.colony(label),
      queen: {
        how: 'raises-own' as const,
        expected: this.queen(`${label} ${on.slice(0, 4)}`),
        parentage: this.of(old),
        from: 'eggs' as const,
      },
    });
    return this.write(start(nucleus), start(other), {
      kind: 'split',
      day: rough(on),
      source: this.colony(source),
      parts: [{ colony: this.colony(nucleus), queen: { how: 'old-queen' } }, raises(other), raises(source)],
    });
  }
}
