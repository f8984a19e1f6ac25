import type { EntryOf } from '../../../src/journal/entry.ts';
import { idOf, type Said } from '../book.ts';
import { framesOfBees, type Hive, mitesOn, shown, treatMites } from '../hives.ts';
import { hiveCalled, hivesAt, queenCalled, type Story } from '../story.ts';
import type { Worth } from '../worth.ts';

/** What the keeper sees on opening a hive. The scripts say what matters; the rounds fill in the rest by chance. */

type Seen = Partial<Omit<EntryOf<'inspection'>, 'kind' | 'colony' | 'id' | 'action' | 'day'>>;

/** A look for a reason of the queen calendar: into one box, for one thing. */
export function look(story: Story, label: string, seen: Seen): void {
  story.book.write({
    kind: 'inspection',
    colony: hiveCalled(story, label).id,
    occasion: 'calendar',
    ...seen,
  });
}

export interface RoundOptions {
  readonly skip?: readonly string[];
  /** Notes by label, as the keeper scribbled them. */
  readonly notes?: Readonly<Record<string, string>>;
  /** What stands out, by label; overrides what chance would have shown. */
  readonly seen?: Readonly<Record<string, Seen>>;
}

const half = (value: number) => Math.round(value * 2) / 2;
const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** A protocol score: 1 to 4 in half points, `middle` being the common run of bees. */
function score(story: Story, middle: number, quality: number, spread: number): number {
  return clamp(half(middle + 0.7 * quality + spread * story.random.normal()), 1, 4);
}

function queenSeen(story: Story, hive: Hive): Seen['queenSeen'] {
  const queen = queenCalled(story, hive.head ?? '');
  if (!queen.present) return 'not-seen';
  const found = story.random.uniform() < (queen.marked ? 0.6 : 0.3);
  if (!found) return 'not-seen';
  return queen.marked ? 'seen-marked' : 'seen-unmarked';
}

/** Looks through every hive with a laying queen at a yard and writes one inspection for each. */
function round(
  story: Story,
  yard: string,
  options: RoundOptions,
  seen: (hive: Hive, bees: Worth, frames: number) => Seen,
): void {
  for (const hive of hivesAt(story, yard)) {
    if (!hive.head || options.skip?.includes(hive.label)) continue;
    const bees = shown(hive, story.queens, story.book.today());
    const frames = framesOfBees(hive, story.book.today(), bees.buildUp);
    const noted = options.notes?.[hive.label];
    const inspection = { ...seen(hive, bees, frames), ...options.seen?.[hive.label] };
    if (inspection.occasion === 'autumn') hive.autumnFrames = inspection.framesOfBees;
    story.book.write({
      kind: 'inspection',
      colony: hive.id,
      ...inspection,
      ...(noted ? { note: noted } : {}),
    });
  }
}

/** The first thorough look of the year. */
export function springRound(story: Story, yard: string, options: RoundOptions = {}): void {
  const weather = 0.15 * story.random.normal();
  round(story, yard, options, (hive, bees, frames) => ({
    occasion: 'spring',
    queenSeen: queenSeen(story, hive),
    eggs: true,
    cappedWorkerBrood: true,
    gentle: score(story, 3.05 + weather, bees.gentle, 0.32),
    calm: score(story, 3 + weather, bees.calm, 0.32),
    framesOfBees: half(frames),
    framesOfBrood: half(frames * (0.38 + 0.05 * story.random.normal())),
    framesOfStores: half(2.5 + story.random.uniform() * 3),
    broodPattern: Math.round(clamp(88 + 3.5 * bees.brood + 3 * story.random.normal(), 55, 99)),
  }));
}

/** A round of the swarming season or of high summer. */
export function summerRound(story: Story, yard: string, options: RoundOptions = {}): void {
  const weather = 0.2 * story.random.normal();
  const swarmy = Number(story.book.today().slice(5, 7)) <= 7;
  round(story, yard, options, (hive, bees, frames) => ({
    occasion: 'round',
    queenSeen: queenSeen(story, hive),
    eggs: true,
    gentle: score(story, 3.05 + weather, bees.gentle, 0.35),
    calm: score(story, 3 + weather, bees.calm, 0.35),
    ...(swarmy ? swarmSigns(story, bees) : {}),
    framesOfBees: half(frames * (1 + 0.05 * story.random.normal())),
    framesOfBrood: half(frames * (0.5 + 0.06 * story.random.normal())),
  }));
}

/** 4 and 3.5 without a swarm cell; below that the keeper has seen cells, and could still stop them. */
function swarmSigns(story: Story, bees: Worth): Seen {
  const swarmTendency = Math.max(2.5, score(story, 3.6, bees.staying, 0.4));
  return swarmTendency > 3 ? { swarmTendency } : { swarmTendency, openCells: 1 + story.random.integer(5) };
}

/** What goes into winter. */
export function autumnRound(story: Story, yard: string, options: RoundOptions = {}): void {
  round(story, yard, options, (hive, _bees, frames) => ({
    occasion: 'autumn',
    queenSeen: queenSeen(story, hive),
    framesOfBees: half(frames * (1 + 0.05 * story.random.normal())),
    framesOfBrood: half(frames * 0.15 * story.random.uniform()),
    framesOfStores: half(clamp(frames * 0.75 + 0.7 * story.random.normal(), 2.5, 9)),
  }));
}

/** Most mites die on the old bees between the last brood of autumn and the first of spring. */
const MITES_LEFT_BY_WINTER = 0.3;

type Loss = NonNullable<EntryOf<'winter-outcome'>['cause']>;

/** The walk on the first warm day: who came through, and what the others died of. */
export function winterWalk(story: Story, yard: string, lost: Readonly<Record<string, Loss>>): void {
  const season = 0.03 * story.random.normal();
  const winter = Number(story.book.today().slice(0, 4));
  const labels = Object.keys(lost);
  for (const label of labels)
    if (hiveCalled(story, label).yard !== yard) throw new Error(`${label} is not at ${yard}.`);
  for (const hive of hivesAt(story, yard)) {
    const cause = lost[hive.label];
    const autumn = hive.autumnFrames === undefined ? {} : { autumnFramesOfBees: hive.autumnFrames };
    const outcome = { kind: 'winter-outcome' as const, colony: hive.id, winter, ...autumn };
    hive.autumnFrames = undefined;
    if (cause) {
      hive.alive = false;
      story.book.write({ ...outcome, alive: false, cause });
      continue;
    }
    const bees = shown(hive, story.queens, story.book.today());
    mitesOn(hive, bees.mites, story.book.today());
    treatMites(hive, MITES_LEFT_BY_WINTER * Math.exp(0.4 * story.random.normal()));
    const kept = clamp(0.66 + season + 0.1 * bees.hardy + 0.08 * story.random.normal(), 0.3, 0.97);
    const spring = Math.max(2, half((autumn.autumnFramesOfBees ?? 8) * kept));
    hive.size = clamp(spring / 6.2, 0.3, 1.05);
    hive.sizeDay = Date.parse(`${story.book.today()}T00:00:00Z`) / 86_400_000;
    story.book.write({ ...outcome, alive: true, springFramesOfBees: spring });
  }
}

/** A pin test in all wintered hives of a yard at once, read after the same hours. */
export function pinTest(story: Story, yard: string, hours: number): void {
  const year = Number(story.book.today().slice(0, 4));
  for (const hive of hivesAt(story, yard)) {
    if (!hive.head || queenCalled(story, hive.head).year >= year) continue;
    const { hygiene } = shown(hive, story.queens, story.book.today());
    const left = 1 / (1 + Math.exp(1.3 * hygiene + 0.25 * story.random.normal()));
    const notCleared = story.random.binomial(50, left);
    story.book.write({ kind: 'hygienic-test', colony: hive.id, method: 'pin', cells: 50, notCleared, hours });
  }
}

export function harvest(
  story: Story,
  yard: string,
  options: { readonly kilograms: number; readonly skip?: readonly string[] },
): void {
  for (const hive of hivesAt(story, yard)) {
    if (!hive.head || hive.size < 0.75 || options.skip?.includes(hive.label)) continue;
    const bees = shown(hive, story.queens, story.book.today());
    const kilograms = half(options.kilograms * hive.size + 4 * bees.honey + 2.5 * story.random.normal());
    if (kilograms > 1) story.book.write({ kind: 'harvest', colony: hive.id, kilograms });
  }
}

export function feed(
  story: Story,
  labels: readonly string[],
  food: EntryOf<'feeding'>['feed'],
  kilograms: number,
): void {
  const said: Said[] = labels.map((label) => ({
    kind: 'feeding',
    colony: hiveCalled(story, label).id,
    feed: food,
    kilograms,
  }));
  story.book.write(...said);
}

/** Writes an entry anew with a field put right; the first version stays readable. */
export function correct(
  story: Story,
  wrong: EntryOf<'graft'>,
  right: Pick<EntryOf<'graft'>, 'accepted'>,
): void {
  const { id, action: _action, recordedAt: _at, recordedBy: _by, ...said } = wrong;
  story.book.write({ ...said, ...right, supersedes: id });
}

/** Takes back what was just written by mistake. */
export function takeBack(story: Story, written: Parameters<typeof idOf>[0], reason: string): void {
  story.book.write({ kind: 'withdrawal', withdraws: [idOf(written)], reason });
}
