import { describe, expect, it } from 'vitest';
import type { EntryOf } from '../../../../src/journal/entry.ts';
import { traitObservations, treatmentOn } from '../../../../src/registry/observations.ts';
import { project } from '../../../../src/registry/project.ts';
import type { Registry } from '../../../../src/registry/state.ts';
import {
  countsOf,
  effectOf,
  growthOf,
  sideOf,
  type Threshold,
  thresholdsFor,
} from '../../../../views/mites/counts.ts';
import {
  againstMites,
  behindCount,
  honeyWait,
  isIn,
  treatmentLog,
} from '../../../../views/mites/treatments.ts';
import { demoRegistry } from '../../../helpers/demo.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

const THRESHOLDS: readonly Threshold[] = [
  { id: 'b', months: [8], method: 'wash', value: 3, jurisdiction: 'here', source: 'the club' },
  { id: 'a', months: [8], method: 'wash', value: 2, jurisdiction: 'there', source: 'the guide' },
  { id: 'c', months: [8], method: 'natural-drop', value: 10, jurisdiction: 'here', source: 'the club' },
];

type Told = readonly (readonly [string, number] | readonly [string, 'in' | 'out'])[];

/** One colony with washes of 300 bees and a treatment put in and taken out. */
function yard(told: Told) {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { '1': 'Alder' });
  const colony = story.colony('1');
  let treatment: EntryOf<'treatment'>['id'] | undefined;
  for (const [on, what] of told) {
    if (typeof what === 'number') {
      const sample = { method: 'wash' as const, mites: what, bees: 300 };
      story.write({ kind: 'mite-count', day: rough(on), colony, sample });
    } else if (what === 'in') {
      treatment = story.write({ kind: 'treatment', day: rough(on), colonies: [colony], active: 'thymol' })[0]
        ?.id;
    } else if (treatment) {
      story.write({ kind: 'treatment-ended', day: rough(on), treatment });
    }
  }
  const registry = project(story.journal());
  const record = registry.colonies.get(colony);
  if (!record) throw new Error('The story has a colony 1.');
  const counts = countsOf(registry, record, day('2026-12-31'), THRESHOLDS);
  return { registry, counts, treatments: againstMites(registry, record) };
}

const last = <T>(list: readonly T[]): T => {
  const item = list.at(-1);
  if (item === undefined) throw new Error('The list is empty.');
  return item;
};

describe('a count beside a threshold', () => {
  // Exact limits of 0, 6 and 12 mites on 300 bees: below 1.22 %, 0.74 to 4.30 %, 2.08 to 6.88 % (R, binom.test).
  it('is above or below only where its whole interval is', () => {
    const figures = yard([
      ['2026-08-01', 0],
      ['2026-08-02', 6],
      ['2026-08-03', 12],
    ]).counts.map(({ figure }) => figure);
    expect(figures.map((figure) => sideOf(figure, 2))).toEqual(['below', 'found-above', 'above']);
    expect(figures.map((figure) => sideOf(figure, 4.1))).toEqual(['below', 'found-below', 'found-below']);
  });

  it('is compared with the thresholds of its own method and month, the lowest first', () => {
    const wash = { method: 'wash' as const, mites: 3, bees: 300 };
    const values = (on: string) =>
      thresholdsFor(THRESHOLDS, { day: rough(on), sample: wash }).map(({ value }) => value);
    expect(values('2026-08-31')).toEqual([2, 3]);
    expect(values('2026-09-01')).toEqual([]);
  });
});

describe('a count near a treatment', () => {
  it('is set aside while the treatment is in, without a day until when', () => {
    const { counts } = yard([
      ['2026-08-01', 'in'],
      ['2026-08-10', 1],
    ]);
    expect(last(counts).setAside).toMatchObject({ state: { acting: true } });
    expect(last(counts).setAside?.until).toBeUndefined();
  });

  it('is set aside until 42 days after the treatment came out, and counts from that day on', () => {
    const { counts } = yard([
      ['2026-08-01', 'in'],
      ['2026-08-15', 'out'],
      ['2026-09-25', 1],
      ['2026-09-26', 1],
    ]);
    expect(counts.map(({ setAside }) => setAside?.until)).toEqual(['2026-09-26', undefined]);
  });

  it('is judged by the very treatment that the breeding values go by, in every count of the demo yard', () => {
    const registry = demoRegistry();
    const states = new Map(
      traitObservations(registry).flatMap((each) =>
        each.kind === 'mite-count' ? [[each.id, each.treatment]] : [],
      ),
    );
    expect(states.size).toBeGreaterThan(100);
    for (const colony of registry.colonies.values()) {
      for (const entry of colony.entries) {
        if (entry.kind !== 'mite-count') continue;
        const behind = behindCount(againstMites(registry, colony), entry.day);
        expect(behind?.state).toEqual(states.get(entry.id));
        if (behind) expect(treatmentOn([behind.span], entry.day)).toEqual(behind.state);
      }
    }
  });
});

describe('two counts together', () => {
  it('tell growth where no treatment lies between: 6 and 18 mites 90 days apart double in 56.8 days', () => {
    // log 2 / (log(18/6) / 90) = 56.78
    const { counts, treatments } = yard([
      ['2026-05-01', 6],
      ['2026-07-30', 18],
    ]);
    expect(growthOf(counts, treatments)?.doublingDays).toBeCloseTo((90 * Math.LN2) / Math.log(3), 9);
  });

  it('tell no growth across a treatment, nor less than four weeks apart', () => {
    const across = yard([
      ['2026-05-01', 6],
      ['2026-05-20', 'in'],
      ['2026-06-01', 'out'],
      ['2026-07-30', 18],
    ]);
    expect(growthOf(across.counts, across.treatments)).toBeUndefined();
    const near = yard([
      ['2026-05-01', 6],
      ['2026-05-20', 9],
    ]);
    expect(growthOf(near.counts, near.treatments)).toBeUndefined();
  });

  it('tell what a treatment did from the count before it and the one set aside because of it', () => {
    const { counts } = yard([
      ['2026-07-25', 30],
      ['2026-08-01', 'in'],
      ['2026-08-15', 'out'],
      ['2026-08-25', 3],
    ]);
    const effect = effectOf(counts, last(counts));
    expect(effect?.shows).toBe('decline');
    expect(Math.exp((effect?.rate ?? 0) * (effect?.days ?? 0))).toBeCloseTo(0.1, 9);
    expect(effectOf(counts, counts[0] ?? last(counts))).toBeUndefined();
  });
});

describe('a treatment', () => {
  const spanOf = (registry: Registry) => last(treatmentLog(registry, day('2026-12-31')));

  it('is in until the day it is taken out', () => {
    const open = spanOf(yard([['2026-08-01', 'in']]).registry);
    const shut = spanOf(
      yard([
        ['2026-08-01', 'in'],
        ['2026-08-15', 'out'],
      ]).registry,
    );
    expect([
      isIn(open, day('2026-08-14')),
      isIn(shut, day('2026-08-14')),
      isIn(shut, day('2026-08-15')),
    ]).toEqual([true, true, false]);
  });

  it('has no honey wait of its own making: what the keeper did not take from the label is not known', () => {
    const { registry } = yard([
      ['2026-08-01', 'in'],
      ['2026-08-15', 'out'],
    ]);
    const span = spanOf(registry);
    expect(honeyWait(span)).toEqual({ is: 'not-known' });
    expect(honeyWait({ ...span, entry: { ...span.entry, honeyWaitDays: 28 } })).toEqual({
      is: 'until',
      days: 28,
      day: '2026-09-12',
    });
  });
});
