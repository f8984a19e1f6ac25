import { describe, expect, it } from 'vitest';
import { inferQueenCalendar } from '../../../graph/calendar/index.ts';
import { dayNumber, firstDay, isExactDay, lastDay, type PlainDay } from '../../../src/journal/day.ts';
import type { EntryKind, EntryOf } from '../../../src/journal/entry.ts';
import { calendarFacts } from '../../../src/registry/calendar.ts';
import { project } from '../../../src/registry/project.ts';
import { headOn, isAlive, labelOn, likelyDam, yardOn } from '../../../src/registry/queries.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { DEMO_DAY, demoColony, demoEntries, demoJournal, demoRegistry } from '../../helpers/demo.ts';

const registry = demoRegistry();

function entriesOf<K extends EntryKind>(kind: K): EntryOf<K>[] {
  return registry.entries.filter((entry) => entry.kind === kind) as EntryOf<K>[];
}

function founderOf(queen: Queen): string {
  const likely = likelyDam(queen);
  const mother = likely && registry.queens.get(likely.queen);
  return mother ? founderOf(mother) : (queen.name ?? '');
}

/** Winters survived and winters entered, by the line of the queen who headed the colony in December. */
function winters(): ReadonlyMap<string, { readonly alive: number; readonly all: number }> {
  const tally = new Map<string, { alive: number; all: number }>();
  for (const { colony, winter, alive } of entriesOf('winter-outcome')) {
    const record = registry.colonies.get(colony);
    const head = record && headOn(registry, record, `${winter - 1}-12-15` as PlainDay);
    if (!head) continue;
    const counts = tally.get(founderOf(head)) ?? { alive: 0, all: 0 };
    tally.set(founderOf(head), { alive: counts.alive + (alive ? 1 : 0), all: counts.all + 1 });
  }
  return tally;
}

describe('the records of the demo yard', () => {
  it('show that the line of Hazel winters best and that of Linden worst, with losses in each', () => {
    const share = (line: string) => {
      const { alive, all } = winters().get(line) ?? { alive: 0, all: 0 };
      expect(all).toBeGreaterThanOrEqual(6);
      expect(alive).toBeLessThan(all);
      return alive / all;
    };
    expect(share('Hazel')).toBeGreaterThan(0.7);
    expect(share('Linden')).toBeLessThan(0.6);
    for (const line of ['Sorrel', 'Vagrant']) expect(share(line)).toBeGreaterThan(share('Linden'));
  });

  it('name a cause for every loss, and more than four kinds of them', () => {
    const losses = entriesOf('winter-outcome').filter(({ alive }) => !alive);
    expect(losses.filter(({ cause }) => cause === undefined)).toEqual([]);
    expect(new Set(losses.map(({ cause }) => cause)).size).toBeGreaterThan(4);
  });

  it('hold mite counts before a treatment and others within six weeks of one', () => {
    const treated = entriesOf('treatment');
    const underTreatment = entriesOf('mite-count').filter((count) =>
      treated.some(({ colonies, day }) => {
        const since = dayNumber(lastDay(count.day)) - dayNumber(firstDay(day));
        return colonies.includes(count.colony) && since >= 0 && since <= 42;
      }),
    );
    expect(underTreatment.length).toBeGreaterThan(10);
    expect(entriesOf('mite-count').length - underTreatment.length).toBeGreaterThan(60);
    const methods = new Set(entriesOf('mite-count').map(({ sample }) => sample.method));
    expect([...methods].sort()).toEqual(['natural-drop', 'sugar-shake', 'wash']);
  });

  it('treat only colonies that stood at the counts above two in a hundred, where the keeper says so', () => {
    const sparing = entriesOf('treatment').filter(({ remark }) => remark?.includes('above two in a hundred'));
    expect(sparing.length).toBeGreaterThan(0);
    for (const { colonies, day } of sparing) {
      for (const colony of colonies) {
        const last = entriesOf('mite-count').findLast((count) => count.colony === colony && count.day <= day);
        const sample = last?.sample;
        expect(sample && 'bees' in sample && sample.mites / sample.bees).toBeGreaterThan(0.02);
      }
    }
  });

  it('say in most seasons which drones flew at both yards, with a background of its own for each', () => {
    const own = new Map<string, Set<number>>();
    for (const { yard, season } of entriesOf('drone-background')) {
      const name = registry.yards.get(yard)?.name ?? '';
      own.set(name, (own.get(name) ?? new Set()).add(season));
    }
    expect(own.get('Sallow Bank')?.size).toBeGreaterThanOrEqual(5);
    expect(own.get('High Fallow')?.size).toBeGreaterThanOrEqual(5);
    expect(
      new Set(entriesOf('drone-background').map(({ background }) => background)).size,
    ).toBeGreaterThanOrEqual(2);
  });

  it('score temper three times and more in a season for most wintered colonies', () => {
    const scored = new Map<string, number>();
    for (const { colony, day, gentle } of entriesOf('inspection')) {
      const key = `${colony} ${day.slice(0, 4)}`;
      if (gentle !== undefined) scored.set(key, (scored.get(key) ?? 0) + 1);
    }
    const wintered = entriesOf('winter-outcome').filter(({ alive, winter }) => alive && winter < 2026);
    const often = wintered.filter(({ colony, winter }) => (scored.get(`${colony} ${winter}`) ?? 0) >= 3);
    expect(often.length / wintered.length).toBeGreaterThan(0.6);
  });

  it('hold a correction, a withdrawal, a swarm taken, a joining, a hygienic test and a graft', () => {
    expect(demoEntries().some(({ supersedes }) => supersedes !== undefined)).toBe(true);
    expect(demoEntries().some(({ kind }) => kind === 'withdrawal')).toBe(true);
    expect(entriesOf('colony-started').some(({ how }) => how === 'swarm-taken')).toBe(true);
    for (const kind of [
      'colonies-joined',
      'hygienic-test',
      'graft',
      'frames-moved',
      'feeding',
      'harvest',
    ] as const) {
      expect(entriesOf(kind).length).toBeGreaterThan(0);
    }
  });

  it('agree with the queen calendar on every day that a queen was confirmed', () => {
    const confirmed = entriesOf('queen-confirmed');
    let compared = 0;
    for (const day of new Set(confirmed.map((entry) => entry.day))) {
      if (!isExactDay(day)) continue;
      const then = project(demoJournal(), { until: lastDay(day) });
      for (const entry of confirmed.filter((each) => each.day === day)) {
        const colony = then.colonies.get(entry.colony);
        const facts = colony && calendarFacts(then, colony, lastDay(day));
        if (!facts) continue;
        const [first, ...rest] = facts.makings;
        const { contradictions } = inferQueenCalendar({
          making: first ? [first, ...rest] : [],
          observations: facts.observations,
          on: dayNumber(lastDay(day)),
        });
        expect(contradictions.filter(({ code }) => code !== 'drone-brood-only')).toEqual([]);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(0);
  });

  it('leave a virgin due in S32, one on her flights in S6 and an overdue queen in H11', () => {
    const state = (label: string) => {
      const facts = calendarFacts(registry, demoColony(label), DEMO_DAY);
      const { makings, observations } = facts ?? { makings: [], observations: [] };
      return inferQueenCalendar({ making: makings, observations, on: dayNumber(DEMO_DAY) }).state.code;
    };
    expect(['S32', 'S6', 'H11'].map(state)).toEqual(['virgin', 'mating', 'overdue']);
  });

  it('leave a mite wash due: a month and more since the last in every colony with a laying queen', () => {
    const late = [...registry.colonies.values()].filter((colony) => {
      const name = registry.yards.get(yardOn(colony, DEMO_DAY) ?? ('' as never))?.name;
      return isAlive(colony, DEMO_DAY) && name === 'Sallow Bank' && headOn(registry, colony, DEMO_DAY);
    });
    expect(late.length).toBeGreaterThan(2);
    for (const colony of late) {
      const last = entriesOf('mite-count').findLast((count) => count.colony === colony.id);
      const days = last ? dayNumber(DEMO_DAY) - dayNumber(lastDay(last.day)) : Number.POSITIVE_INFINITY;
      expect(days, labelOn(colony, DEMO_DAY)).toBeGreaterThanOrEqual(30);
    }
  });
});
