/** A small family of queens written as a keeper writes it, for the tests of files and pedigrees. */
import type { Draft, Entry } from '../../src/journal/entry.ts';
import type { ColonyId, QueenId, YardId } from '../../src/journal/ids.ts';
import type { Journal } from '../../src/journal/journal.ts';
import type { Scribe } from '../../src/journal/write.ts';
import { project } from '../../src/registry/project.ts';
import type { Registry } from '../../src/registry/state.ts';
import { day, scribe, written } from './devices.ts';

/**
 * Old Alder (2021) -- Birch, split off 2022 -- Cedar, cells of 2023, inseminated by sons of Dogwood
 *          \-- a sister of Birch's, failed            \-- Elder, split off 2025
 *                                                      \-- a sister of Elder's
 * Fern stands apart.
 */
export interface Family {
  readonly entries: readonly Entry[];
  readonly journal: Journal;
  readonly registry: Registry;
  readonly by: Scribe;
  readonly newId: () => string;
  readonly queens: Readonly<
    Record<'alder' | 'birch' | 'failed' | 'cedar' | 'dogwood' | 'elder' | 'sister' | 'fern', QueenId>
  >;
}

export function family(by: Scribe = scribe()): Family {
  const id = by.newId;
  const q = () => id() as QueenId;
  const queens = {
    alder: q(),
    birch: q(),
    failed: q(),
    cedar: q(),
    dogwood: q(),
    elder: q(),
    sister: q(),
    fern: q(),
  };
  const yard = id() as YardId;
  const c = Array.from({ length: 8 }, () => id() as ColonyId);
  const start = (on: string, index: number, how: Draft<'colony-started'>['how']): Draft => ({
    kind: 'colony-started',
    day: day(on),
    colony: c[index]!,
    yard,
    label: `Box ${index + 1}`,
    how,
  });
  const eggs = (dam: QueenId) => ({
    dams: [{ queen: dam, probability: 1 }],
    evidence: 'eggs-named' as const,
  });
  const laying = (on: string, queen: QueenId, index: number): Draft => ({
    kind: 'queen-confirmed',
    day: day(on),
    queen,
    colony: c[index]!,
    seen: 'eggs',
  });
  const entries = written(
    [
      { kind: 'keeper-named', day: day('2021-04-01'), keeper: by.keeper, name: 'Ida' },
      { kind: 'yard-opened', day: day('2021-04-01'), yard, name: 'Hill' },
      start('2021-04-01', 0, 'bought'),
      {
        kind: 'queen-entered',
        day: day('2021-04-01'),
        queen: queens.alder,
        name: 'Old Alder',
        colony: c[0]!,
        born: day('2020'),
        background: 'local',
        laying: true,
      },
      start('2021-04-01', 4, 'bought'),
      {
        kind: 'queen-entered',
        day: day('2021-04-01'),
        queen: queens.dogwood,
        name: 'Dogwood',
        colony: c[4]!,
        background: 'valley',
        laying: true,
      },
      start('2021-04-01', 5, 'swarm-taken'),
      {
        kind: 'queen-entered',
        day: day('2021-04-01'),
        queen: queens.fern,
        name: 'Fern',
        colony: c[5]!,
        laying: true,
      },
      { kind: 'winter-outcome', day: day('2022-03-20'), colony: c[0]!, winter: 2022, alive: true },
      start('2022-05-14', 1, 'split'),
      start('2022-05-14', 2, 'split'),
      {
        kind: 'split',
        day: day('2022-05-14'),
        source: c[0]!,
        parts: [
          { colony: c[0]!, queen: { how: 'old-queen' } },
          {
            colony: c[1]!,
            queen: { how: 'raises-own', expected: queens.birch, parentage: eggs(queens.alder), from: 'eggs' },
          },
          {
            colony: c[2]!,
            queen: {
              how: 'raises-own',
              expected: queens.failed,
              parentage: eggs(queens.alder),
              from: 'eggs',
            },
          },
        ],
      },
      laying('2022-06-12', queens.birch, 1),
      { kind: 'queen-named', day: day('2022-06-12'), queen: queens.birch, name: 'Birch' },
      { kind: 'queen-marked', day: day('2022-06-12'), queen: queens.birch, colour: 'yellow', mark: '7' },
      { kind: 'queen-lost', day: day('2022-06-20'), queen: queens.failed, cause: 'failed-to-mate' },
      { kind: 'inspection', day: day('2022-09-10'), colony: c[1]!, gentle: 3.5, framesOfBees: 7 },
      start('2023-05-20', 3, 'nucleus'),
      {
        kind: 'cells-given',
        day: day('2023-05-20'),
        to: c[3]!,
        from: c[1]!,
        expected: queens.cedar,
        parentage: eggs(queens.birch),
        age: 'capped',
      },
      laying('2023-06-15', queens.cedar, 3),
      { kind: 'queen-named', day: day('2023-06-15'), queen: queens.cedar, name: 'Cedar' },
      {
        kind: 'mating',
        day: day('2023-06-10'),
        queen: queens.cedar,
        way: { manner: 'insemination', droneMothers: [{ queen: queens.dogwood, share: 1 }] },
        effectiveMates: 8,
      },
      start('2025-05-10', 6, 'split'),
      start('2025-05-10', 7, 'split'),
      {
        kind: 'split',
        day: day('2025-05-10'),
        source: c[3]!,
        parts: [
          { colony: c[3]!, queen: { how: 'old-queen' } },
          {
            colony: c[6]!,
            queen: { how: 'raises-own', expected: queens.elder, parentage: eggs(queens.cedar), from: 'eggs' },
          },
          {
            colony: c[7]!,
            queen: {
              how: 'raises-own',
              expected: queens.sister,
              parentage: eggs(queens.cedar),
              from: 'eggs',
            },
          },
        ],
      },
      laying('2025-06-12', queens.elder, 6),
      laying('2025-06-12', queens.sister, 7),
      { kind: 'queen-named', day: day('2025-06-12'), queen: queens.elder, name: 'Elder' },
      { kind: 'queen-lost', day: day('2025-08-01'), queen: queens.elder, cause: 'given-away', to: 'Jon' },
    ],
    by,
  );
  const journal: Journal = new Map(entries.map((entry) => [entry.id, entry]));
  return { entries, journal, registry: project(journal), by, newId: id, queens };
}
