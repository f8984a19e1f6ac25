import type { PlainDay, RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { idOf } from '../book.ts';
import { mitesOn, shown, treatMites } from '../hives.ts';
import { hiveCalled, hivesAt, type Story } from '../story.ts';

/** Counting mites and treating against them. */

const BEES_FOR_DROP = 600;
/** Mites sit in patches: counts scatter more than chance draws of single bees would. */
const PATCHINESS = 0.3;

function infestation(story: Story, label: string): number {
  const hive = hiveCalled(story, label);
  return mitesOn(hive, shown(hive, story.queens, story.book.today()).mites, story.book.today());
}

function patchy(story: Story, level: number): number {
  return Math.min(0.4, level * Math.exp(PATCHINESS * story.random.normal()));
}

/**
 * Half a cup of bees from each of these hives, or from all at a yard with a laying queen. Answers with the mites in a
 * hundred bees by label.
 */
export function wash(
  story: Story,
  where: string | readonly string[],
  method: 'wash' | 'sugar-shake' = 'wash',
): ReadonlyMap<string, number> {
  const inHundred = new Map<string, number>();
  for (const label of labelsOf(story, where)) {
    const beesCounted = story.random.uniform() < 0.3;
    const bees = beesCounted ? 255 + story.random.integer(90) : 300;
    const found = method === 'wash' ? 0.95 : 0.8;
    const mites = story.random.binomial(bees, found * patchy(story, infestation(story, label)));
    inHundred.set(label, (100 * mites) / bees);
    story.book.write({
      kind: 'mite-count',
      colony: hiveCalled(story, label).id,
      sample: { method, mites, bees, ...(beesCounted ? { beesCounted } : {}) },
    });
  }
  return inHundred;
}

/** The labels whose count was above so many mites in a hundred bees. */
export function above(inHundred: ReadonlyMap<string, number>, limit: number): readonly string[] {
  return [...inHundred].filter(([, count]) => count > limit).map(([label]) => label);
}

/** Mites that fell on the board by themselves. */
export function drop(story: Story, where: string | readonly string[], days: number): void {
  for (const label of labelsOf(story, where)) {
    const mites = Math.round(days * BEES_FOR_DROP * patchy(story, infestation(story, label)));
    story.book.write({
      kind: 'mite-count',
      colony: hiveCalled(story, label).id,
      sample: { method: 'natural-drop', mites, days },
    });
  }
}

function labelsOf(story: Story, where: string | readonly string[]): readonly string[] {
  if (typeof where !== 'string') return where;
  return hivesAt(story, where)
    .filter(({ head }) => head !== undefined)
    .map(({ label }) => label);
}

/**
 * A treatment begins; nothing is written where no hive is to be treated. The mites go down at once in the story; the
 * counts under it say only that it works.
 */
export function treat(
  story: Story,
  where: string | readonly string[],
  told: {
    readonly active: EntryOf<'treatment'>['active'];
    readonly manner: string;
    readonly end?: string;
    readonly honeyWaitDays?: number;
    readonly left?: number;
    readonly remark?: string;
  },
): ReturnType<typeof idOf> | undefined {
  const { end, left = 0.1, ...rest } = told;
  const labels = typeof where === 'string' ? hivesAt(story, where).map(({ label }) => label) : where;
  if (labels.length === 0) return undefined;
  for (const label of labels) {
    infestation(story, label);
    treatMites(hiveCalled(story, label), left);
  }
  return idOf(
    story.book.write({
      kind: 'treatment',
      colonies: labels.map((label) => hiveCalled(story, label).id),
      ...rest,
      ...(end ? { end: end as PlainDay } : {}),
    }),
  );
}

export function treatmentOut(story: Story, treatment: ReturnType<typeof treat>): void {
  if (treatment) story.book.write({ kind: 'treatment-ended', treatment });
}

/** A wash that the keeper writes down with a slip of the pen, and puts right two days later. */
export function washMisread(
  story: Story,
  label: string,
  wrong: number,
  right: number,
  laterOn: string,
): void {
  const hive = hiveCalled(story, label);
  const said = {
    kind: 'mite-count' as const,
    colony: hive.id,
    day: story.book.today() as string as RoughDay,
  };
  const slip = story.book.write({ ...said, sample: { method: 'wash', mites: wrong, bees: 300 } });
  story.book.on(laterOn);
  story.book.write({
    ...said,
    sample: { method: 'wash', mites: right, bees: 300 },
    supersedes: idOf(slip),
    remark: `Read my own hand wrongly: ${right}, not ${wrong}.`,
  });
}
