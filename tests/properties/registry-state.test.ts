import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { unite } from '../../src/journal/journal.ts';
import { project } from '../../src/registry/project.ts';
import type { Registry } from '../../src/registry/state.ts';
import { randomStory } from '../helpers/random-journal.ts';

/** What holds of every registry, however much its entries contradict one another. */

const runs = { numRuns: 400 };

function holds(check: (registry: Registry) => void): void {
  fc.assert(
    fc.property(randomStory, (story) => check(project(story.journal()))),
    runs,
  );
}

const openOf = (tenures: Registry['queens'] extends ReadonlyMap<QueenId, infer Q> ? Q : never) =>
  tenures.tenures.filter(({ to }) => to === undefined);

describe('whatever the entries', () => {
  it('a queen heads one colony at most, and is laying while she does', () => {
    holds(({ queens }) => {
      for (const queen of queens.values()) {
        const open = openOf(queen);
        expect(open.length).toBeLessThanOrEqual(1);
        if (open.length === 1) expect(queen.state.is).toBe('laying');
        if (queen.state.is === 'laying') expect(open).toHaveLength(1);
      }
    });
  });

  it('a tenure stands the same in the histories of the queen and the colony', () => {
    holds(({ queens, colonies }) => {
      const ofQueens = [...queens.values()].flatMap(({ tenures }) => tenures);
      const ofColonies = [...colonies.values()].flatMap(({ tenures }) => tenures);
      expect(new Set(ofQueens)).toEqual(new Set(ofColonies));
      expect(ofQueens).toHaveLength(ofColonies.length);
      for (const colony of colonies.values()) {
        for (const tenure of colony.tenures) expect(tenure.colony).toBe(colony.id);
      }
    });
  });

  it('a queen is expected in the colony that expects her, and in no other', () => {
    holds(({ queens, colonies }) => {
      const expecting = [...colonies.values()].flatMap(({ id, expected }) =>
        expected.map((queen): [QueenId, ColonyId] => [queen, id]),
      );
      const expected = [...queens.values()].flatMap(({ id, expectedIn }): [QueenId, ColonyId][] =>
        expectedIn ? [[id, expectedIn]] : [],
      );
      expect(expecting.map(String).sort()).toEqual(expected.map(String).sort());
      for (const queen of queens.values()) {
        expect(queen.expectedIn !== undefined).toBe(queen.state.is === 'expected');
      }
    });
  });

  it('two queens head one colony only where that is said', () => {
    holds(({ colonies, contradictions }) => {
      const said = new Set(
        contradictions.flatMap(({ code, colony }) => (code === 'two-queens-in-colony' ? [colony] : [])),
      );
      for (const { id, tenures } of colonies.values()) {
        if (tenures.filter(({ to }) => to === undefined).length > 1) expect(said.has(id)).toBe(true);
      }
    });
  });

  it('nobody heads or is expected in a colony that ended, unless that is said', () => {
    holds(({ colonies, contradictions }) => {
      const said = new Set(
        contradictions.flatMap(({ code, colony }) => (code === 'colony-already-ended' ? [colony] : [])),
      );
      for (const { id, tenures, expected, ended } of colonies.values()) {
        if (!ended || said.has(id)) continue;
        expect(tenures.filter(({ to }) => to === undefined)).toEqual([]);
        expect(expected).toEqual([]);
      }
    });
  });

  it('the daughters of a queen are those who name her as a possible dam', () => {
    holds(({ queens }) => {
      for (const queen of queens.values()) {
        const naming = [...queens.values()].filter((other) =>
          other.parentage?.dams.some((dam) => dam.queen === queen.id && dam.probability > 0),
        );
        expect([...queen.daughters].sort()).toEqual(naming.map(({ id }) => id).sort());
      }
    });
  });

  it('a contradiction says what was found, why it cannot be, and at least one way out', () => {
    holds(({ contradictions }) => {
      for (const { found, because, remedies } of contradictions) {
        expect(found).not.toBe('');
        expect(because).toMatch(/^[A-Z].*\.$/);
        expect(remedies.length).toBeGreaterThan(0);
        for (const remedy of remedies) expect(remedy).toMatch(/^[A-Z].*\.$/);
      }
    });
  });
});

describe('two parts of one journal', () => {
  it('joined in either order, once or twice, tell of one state', () => {
    fc.assert(
      fc.property(
        randomStory,
        fc.infiniteStream(fc.constantFrom('mine', 'theirs', 'both')),
        (story, whose) => {
          const mine = new Map();
          const theirs = new Map();
          for (const entry of story.entries) {
            const who = whose.next().value;
            if (who !== 'theirs') mine.set(entry.id, entry);
            if (who !== 'mine') theirs.set(entry.id, entry);
          }
          const one = unite(mine, theirs.values()).journal;
          const other = unite(theirs, mine.values()).journal;
          const again = unite(one, theirs.values()).journal;
          const { revision: _, ...whole } = project(story.journal());
          for (const journal of [one, other, again]) expect(project(journal)).toMatchObject(whole);
        },
      ),
      { numRuns: 100 },
    );
  });
});
