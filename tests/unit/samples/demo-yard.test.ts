import { describe, expect, it } from 'vitest';
import { descentTable, lines } from '../../../graph/lineage/index.ts';
import { dayNumber, firstDay } from '../../../src/journal/day.ts';
import { registryGraph } from '../../../src/registry/graph.ts';
import {
  coloniesAt,
  damCertainty,
  headOn,
  isAlive,
  layingQueens,
  likelyDam,
  stayOn,
  yardOn,
} from '../../../src/registry/queries.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { wintersHeaded } from '../../../src/registry/winters-of-queen.ts';
import { DEMO_DAY, demoColony, demoQueen, demoRegistry } from '../../helpers/demo.ts';

const registry = demoRegistry();
const living = [...registry.colonies.values()].filter((colony) => isAlive(colony, DEMO_DAY));

function dam(name: string): string | undefined {
  const likely = likelyDam(demoQueen(name));
  return likely && registry.queens.get(likely.queen)?.name;
}

function founderOf(queen: Queen): string {
  const likely = likelyDam(queen);
  const mother = likely && registry.queens.get(likely.queen);
  return mother ? founderOf(mother) : (queen.name ?? '');
}

describe('the demo yard', () => {
  it('has two yards of its keeper and one of another breeder', () => {
    const yards = [...registry.yards.values()].map(({ name }) => name).sort();
    expect(yards).toEqual(['High Fallow', 'Marl Pit', 'Sallow Bank']);
    expect([...registry.keepers.values()].sort()).toEqual(['Pell Brackwater', 'Wenna Oldfallow']);
  });

  it('has about 15 living colonies and about 80 queens', () => {
    expect(living.length).toBeGreaterThanOrEqual(13);
    expect(living.length).toBeLessThanOrEqual(17);
    expect(registry.queens.size).toBeGreaterThanOrEqual(75);
    expect(registry.queens.size).toBeLessThanOrEqual(90);
  });

  it('has four lines, all alive, one of them hanging on a single queen', () => {
    const all = lines(descentTable(registryGraph(registry)));
    expect(all).toHaveLength(4);
    expect(all.every((line) => line.living > 0)).toBe(true);
    expect(all.filter((line) => line.living === 1).length).toBeGreaterThanOrEqual(1);
    const heads = new Set(layingQueens(registry, DEMO_DAY).map(founderOf));
    expect([...heads].sort()).toEqual(['Hazel', 'Linden', 'Sorrel', 'Vagrant']);
  });

  it('gives every queen a name of her own, apart from the boxes of later years', () => {
    const names = [...registry.queens.values()].flatMap(({ name }) => name ?? []);
    expect(new Set(names).size).toBe(names.length);
    expect(living.filter(({ label }) => names.includes(label))).toEqual([]);
  });

  it('lets no queen lay sooner than a week after she can have emerged', () => {
    const early = [...registry.queens.values()].filter((queen) => {
      const laying = queen.madeBy && queen.parentage ? queen.tenures[0]?.layingFrom : undefined;
      return laying && queen.born && dayNumber(firstDay(laying)) < dayNumber(queen.born.first) + 7;
    });
    expect(early.map(({ name }) => name)).toEqual([]);
  });

  it('loses half a dozen queens and more before they lay', () => {
    const failed = [...registry.queens.values()].filter(({ state }) => state.is === 'failed');
    expect(failed.length).toBeGreaterThanOrEqual(6);
    const causes = new Set(failed.map(({ state }) => state.is === 'failed' && state.cause));
    expect([...causes].sort()).toEqual(
      expect.arrayContaining(['failed-to-emerge', 'failed-to-mate', 'not-found']),
    );
  });

  it('splits Hazel in three, and a week later her cells make a queen in a box where she never lived', () => {
    const norther = demoQueen('Norther');
    expect(dam('Norther')).toBe('Hazel');
    const boxes = new Set(demoQueen('Hazel').tenures.map(({ colony }) => colony));
    expect(norther.tenures.length).toBeGreaterThan(0);
    expect(norther.tenures.filter(({ colony }) => boxes.has(colony))).toEqual([]);
    expect(demoColony('Linden', firstDay(norther.tenures[0]?.from ?? DEMO_DAY)).id).toBe(
      norther.tenures[0]?.colony,
    );
  });

  it('finds a silent supersedure late: Sough is probably, not surely, a daughter of Flint', () => {
    const sough = demoQueen('Sough');
    expect(dam('Sough')).toBe('Flint');
    expect(damCertainty(sough)).toBe('probable');
    expect(demoQueen('Flint').state).toMatchObject({ is: 'gone', cause: 'superseded', deduced: true });
  });

  it('leaves it open which of two dams Onyx is from', () => {
    const dams = demoQueen('Onyx').parentage?.dams.map(({ probability }) => probability);
    expect(dams).toEqual([0.5, 0.5]);
  });

  it('knows the drones of one mating: Brook was inseminated from Gneiss', () => {
    const way = demoQueen('Brook').mating?.way;
    expect(way).toMatchObject({
      manner: 'insemination',
      droneMothers: [{ queen: demoQueen('Gneiss').id, share: 1 }],
    });
  });

  it('gives Slate away and hears of the winters of her daughters from another keeper', () => {
    const pell = [...registry.keepers].find(([, name]) => name === 'Pell Brackwater')?.[0];
    const daughters = demoQueen('Slate').daughters.map((id) => registry.queens.get(id)?.name);
    expect(daughters).toEqual(expect.arrayContaining(['Sable', 'Umber']));
    for (const name of ['Sable', 'Umber']) {
      const outcomes = demoQueen(name).entries.filter(({ kind }) => kind === 'winter-outcome');
      expect(outcomes).toMatchObject([{ alive: true, winter: 2026, recordedBy: pell }]);
    }
  });

  it('has a divided box: two living colonies under one roof, entrances apart', () => {
    const halves = ['H2', 'H12'].map((label) => demoColony(label));
    const places = halves.map((half) => stayOn(half, DEMO_DAY)?.place);
    expect(places.map((place) => place?.underRoofWith)).toEqual([halves[1]?.id, halves[0]?.id]);
    expect(places.map((place) => place?.entrance)).toEqual(['S', 'N']);
    expect(new Set(halves.map((half) => yardOn(half, DEMO_DAY))).size).toBe(1);
  });

  it('ends in the middle of splitting: five parts and more wait for a queen', () => {
    const waiting = living.filter(
      (colony) => colony.expected.length > 0 && !headOn(registry, colony, DEMO_DAY),
    );
    expect(waiting.length).toBeGreaterThanOrEqual(5);
    for (const name of ['Sallow Bank', 'High Fallow']) {
      const yard = [...registry.yards.values()].find((each) => each.name === name);
      expect(yard && coloniesAt(registry, yard.id, DEMO_DAY).length).toBeGreaterThanOrEqual(5);
    }
  });

  it('has queens who headed colonies through three winters', () => {
    for (const name of ['Norther', 'Gale', 'Bora']) {
      expect(wintersHeaded(demoQueen(name), DEMO_DAY)).toBe(3);
    }
  });
});
