import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { maternalPath } from '../../graph/lineage/maternal-path.ts';
import { createRegistryGraph, queenKey, type RegistryGraph } from '../../graph/lineage/registry-graph.ts';
import { firstDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { registryGraph, syncGraph } from '../../src/registry/graph.ts';
import { openedPedigreeInput } from '../../src/registry/pedigree.ts';
import { contradictionsOf, extendProjection, project, startProjection } from '../../src/registry/project.ts';
import type { Registry } from '../../src/registry/state.ts';
import { randomStory } from '../helpers/random-journal.ts';
import { day } from '../helpers/story.ts';

function plain(registry: Registry): unknown {
  const { revision: _, ...rest } = registry;
  return Object.fromEntries(
    Object.entries(rest).map(([key, value]) => [
      key,
      value instanceof Map ? [...value].sort(([a], [b]) => (String(a) < String(b) ? -1 : 1)) : value,
    ]),
  );
}

function drawn(graph: RegistryGraph): unknown {
  const { nodes, edges } = graph.export();
  return {
    nodes: nodes.toSorted((a, b) => (a.key < b.key ? -1 : 1)),
    edges: edges.map((edge) => JSON.stringify(edge)).sort(),
  };
}

describe('the projection', () => {
  it('extended entry by entry, in whatever order they arrive, equals one made from nothing', () => {
    fc.assert(
      fc.property(randomStory, fc.infiniteStream(fc.nat()), (story, chance) => {
        const arriving = [...story.entries];
        let projection = startProjection(new Map());
        while (arriving.length > 0) {
          const next = (chance.next().value as number) % 3 === 0 ? arriving.pop() : arriving.shift();
          if (next) projection = extendProjection(projection, [next]);
        }
        expect(plain(projection.registry)).toEqual(plain(project(story.journal())));
      }),
      { numRuns: 150 },
    );
  });

  it('extended by whole files, which overlap and come in any order, equals one made from nothing', () => {
    fc.assert(
      fc.property(randomStory, fc.infiniteStream(fc.nat(7)), (story, chance) => {
        const files: Entry[][] = [[], [], [], []];
        for (const entry of story.entries) {
          const pick = chance.next().value as number;
          files[pick % 4]?.push(entry);
          if (pick > 3) files[(pick + 1) % 4]?.push(entry);
        }
        let projection = startProjection(new Map());
        for (const file of files) projection = extendProjection(projection, file);
        expect(plain(projection.registry)).toEqual(plain(project(story.journal())));
        expect(extendProjection(projection, story.entries)).toBe(projection);
      }),
      { numRuns: 150 },
    );
  });

  it('of a journal until a day knows nothing of what happened after it', () => {
    fc.assert(
      fc.property(randomStory, (story) => {
        const until = day('2024-12-31');
        const { entries } = project(story.journal(), { until });
        for (const entry of entries) expect(firstDay(entry.day) <= until).toBe(true);
      }),
      { numRuns: 100 },
    );
  });

  it('foretells exactly the contradictions that writing brings', () => {
    fc.assert(
      fc.property(randomStory, (story) => {
        const last = story.entries.at(-1);
        if (!last || last.kind === 'withdrawal' || last.supersedes) return;
        const before = startProjection(new Map(story.entries.slice(0, -1).map((entry) => [entry.id, entry])));
        const key = (list: Registry['contradictions']) =>
          list.map((each) => `${each.code} ${each.entry} ${each.queen} ${each.colony}`).sort();
        const foretold = key(contradictionsOf(before, [last]));
        const known = new Set(key(before.registry.contradictions));
        const came = key(extendProjection(before, [last]).registry.contradictions).filter(
          (each) => !known.has(each),
        );
        expect(new Set(foretold)).toEqual(new Set(came));
      }),
      { numRuns: 150 },
    );
  });

  it('leaves an earlier snapshot as it was', () => {
    fc.assert(
      fc.property(randomStory, (story) => {
        const half = story.entries.slice(0, Math.ceil(story.entries.length / 2));
        const before = startProjection(new Map(half.map((entry) => [entry.id, entry])));
        const copy = structuredClone(plain(before.registry));
        for (const entry of story.entries.slice(half.length)) extendProjection(before, [entry]);
        expect(plain(before.registry)).toEqual(copy);
      }),
      { numRuns: 50 },
    );
  });
});

describe('whatever contradictions stand', () => {
  it('the pedigree for the numerics compiles, and every queen has a founder', () => {
    fc.assert(
      fc.property(randomStory, (story) => {
        const registry = project(story.journal());
        const { pedigree } = openedPedigreeInput(registry);
        for (const queen of registry.queens.keys()) expect(pedigree.queenIndex.has(queen)).toBe(true);
        const graph = registryGraph(registry);
        for (const queen of registry.queens.keys()) {
          expect(maternalPath(graph, queenKey(queen)).keys.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe('the graph of the registry', () => {
  it('brought in step after each entry equals one drawn from nothing', () => {
    fc.assert(
      fc.property(randomStory, (story) => {
        const graph = createRegistryGraph();
        let projection = startProjection(new Map());
        for (const entry of story.entries) {
          projection = extendProjection(projection, [entry]);
          syncGraph(graph, projection.registry);
        }
        expect(drawn(graph)).toEqual(drawn(registryGraph(projection.registry)));
      }),
      { numRuns: 100 },
    );
  });
});
