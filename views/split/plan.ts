import { daysBetween, firstDay, isExactDay, type PlainDay } from '../../src/journal/day.ts';
import type { CellAge } from '../../src/journal/entries/increase.ts';
import type { Compass, FrameCounts, Place } from '../../src/journal/entry-parts.ts';
import type { ColonyId, QueenId, YardId } from '../../src/journal/ids.ts';
import { byLabel, headOn, isAlive, labelOn, tenureOn, yardOn } from '../../src/registry/queries.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import { lastInspection } from '../parts/colony-facts.ts';

/**
 * A split as it lies on the table: where the old queen is, which frames went where, what each part has for a queen.
 * Nothing here is written until the keeper confirms. Changes are pure: a plan in, a plan out.
 */
export interface SplitPlan {
  readonly source: ColonyId;
  readonly day: PlainDay;
  /** Key of the part that has the old queen; absent when nobody known heads the source. */
  readonly oldQueenIn?: string;
  readonly parts: readonly PlanPart[];
}

/**
 * A plan taken up on a later day. Laid out for the day on which it was left, it was a plan and no deed: it then holds for
 * today. A day that the keeper set otherwise stays.
 */
export function takenUp(plan: SplitPlan, left: PlainDay, today: PlainDay): SplitPlan {
  return plan.day === left && left < today ? { ...plan, day: today } : plan;
}

export type FrameKind = keyof FrameCounts;

export interface PlanPart {
  readonly key: string;
  readonly box: PlanBox;
  readonly frames: FrameCounts;
  /** What the keeper chose; absent: what follows from the frames in it. */
  readonly queen?: PlanQueen;
  /** The queen expected here, should one be; her id is fixed so that checks while planning are stable. */
  readonly expected: QueenId;
}

export type PlanBox =
  | { readonly is: 'source'; readonly colony: ColonyId }
  | {
      readonly is: 'new';
      readonly colony: ColonyId;
      readonly label: string;
      readonly yard: YardId;
      readonly place: Place;
    }
  | { readonly is: 'existing'; readonly colony: ColonyId };

export type PlanQueen =
  | { readonly how: 'raises-own'; readonly from: 'eggs' | 'young-brood' | 'open-cells' | 'capped-cells' }
  | {
      readonly how: 'given-cells';
      readonly cellsFrom?: ColonyId;
      readonly age: CellAge;
      readonly layer?: QueenId;
    }
  | { readonly how: 'given-queen'; readonly queen?: QueenId }
  | { readonly how: 'none' };

export const SOURCE = 'source';
export const FRAME_KINDS = [
  'eggs',
  'openBrood',
  'emergingBrood',
  'cells',
  'stores',
  'drawnComb',
  'foundation',
  'shakenBees',
] as const satisfies readonly FrameKind[];

export const FRAME_WORDS: Readonly<Record<FrameKind, string>> = {
  eggs: 'eggs and young brood',
  openBrood: 'open brood',
  emergingBrood: 'capped brood',
  cells: 'queen cells',
  stores: 'stores',
  drawnComb: 'drawn comb',
  foundation: 'foundation',
  shakenBees: 'bees shaken in',
};

/** A plan of one source and one new part, as a split begins. */
export function startPlan(registry: Registry, source: Colony, day: PlainDay, newId: () => string): SplitPlan {
  const cells = cellsSeen(source, day);
  const stays: PlanPart = {
    key: SOURCE,
    box: { is: 'source', colony: source.id },
    frames: {},
    expected: newId() as QueenId,
    ...(cells ? { queen: { how: 'raises-own', from: cells } } : {}),
  };
  const plan: SplitPlan = {
    source: source.id,
    day,
    parts: [stays],
    ...(tenureOn(source, day) ? { oldQueenIn: SOURCE } : {}),
  };
  return addPart(plan, registry, newId);
}

/** Cells seen in the source at a look on this day or the day before: its next queen is further on than its eggs. */
function cellsSeen(source: Colony, day: PlainDay): 'open-cells' | 'capped-cells' | undefined {
  const look = lastInspection(source, day);
  if (!look || !isExactDay(look.day) || daysBetween(firstDay(look.day), day) > 1) return undefined;
  if (look.cappedCells) return 'capped-cells';
  return look.openCells ? 'open-cells' : undefined;
}

/** The plan with one more new part beside the source. */
export function addPart(plan: SplitPlan, registry: Registry, newId: () => string): SplitPlan {
  const source = registry.colonies.get(plan.source);
  const yard = source && yardOn(source, plan.day);
  if (!source || !yard) return plan;
  const taken = plan.parts.flatMap(({ box }) => (box.is === 'new' ? [box.label] : []));
  const part: PlanPart = {
    key: newId(),
    box: {
      is: 'new',
      colony: newId() as ColonyId,
      label: nextLabel(registry, plan.day, taken),
      yard,
      place: {},
    },
    frames: {},
    expected: newId() as QueenId,
  };
  return { ...plan, parts: [...plan.parts, part] };
}

/** The next free whole number, where boxes are numbered; else nothing: a label is the keeper's to give. */
export function nextLabel(registry: Registry, on: PlainDay, taken: readonly string[]): string {
  const labels = [...registry.colonies.values()]
    .filter((colony) => isAlive(colony, on))
    .map((colony) => labelOn(colony, on));
  const numbers = [...labels, ...taken].filter((label) => /^\d{1,4}$/.test(label)).map(Number);
  if (numbers.length * 2 < labels.length || numbers.length === 0) return '';
  return String(Math.max(...numbers) + 1);
}

export function removePart(plan: SplitPlan, key: string): SplitPlan {
  if (key === SOURCE) return plan;
  const parts = plan.parts.filter((part) => part.key !== key);
  return { ...plan, parts, ...(plan.oldQueenIn === key ? { oldQueenIn: SOURCE } : {}) };
}

export function changePart(plan: SplitPlan, key: string, change: (part: PlanPart) => PlanPart): SplitPlan {
  return { ...plan, parts: plan.parts.map((part) => (part.key === key ? change(part) : part)) };
}

/** What is in the keeper's hand between lifting and setting down. */
export type Hand =
  | { readonly holds: 'queen' }
  | { readonly holds: 'frame'; readonly kind: FrameKind; readonly from?: string };

/** Sets down what is in the hand. A frame lifted out of one part leaves it; one from the source is simply added. */
export function setDown(plan: SplitPlan, hand: Hand, key: string): SplitPlan {
  if (hand.holds === 'queen') return { ...plan, oldQueenIn: key };
  const lifted = hand.from === undefined ? plan : addFrames(plan, hand.from, hand.kind, -1);
  return key === SOURCE ? lifted : addFrames(lifted, key, hand.kind, 1);
}

export function addFrames(plan: SplitPlan, key: string, kind: FrameKind, by: number): SplitPlan {
  return changePart(plan, key, (part) => {
    const { [kind]: count = 0, ...others } = part.frames;
    const next = Math.max(0, Math.min(60, count + by));
    return { ...part, frames: next === 0 ? others : { ...others, [kind]: next } };
  });
}

/**
 * What a part has for a queen: the old queen where she was put, else the keeper's choice, else what follows from the
 * frames in it. The source keeps its brood, so without her it raises its own from her eggs.
 */
export function queenOf(plan: SplitPlan, part: PlanPart): PlanQueen | { readonly how: 'old-queen' } {
  if (plan.oldQueenIn === part.key) return { how: 'old-queen' };
  if (part.queen) return part.queen;
  if (part.key === SOURCE)
    return plan.oldQueenIn === undefined ? { how: 'none' } : { how: 'raises-own', from: 'eggs' };
  // Whatever else is in it: the first to emerge is out of the cells. How far along they are, the keeper has to say.
  if (part.frames.cells) return { how: 'given-cells', age: 'unknown' };
  if (part.frames.eggs) return { how: 'raises-own', from: 'eggs' };
  if (part.frames.openBrood) return { how: 'raises-own', from: 'young-brood' };
  return { how: 'none' };
}

/** Colonies that could take in a part, or that cells could come from: alive at any yard, not the source. */
export function otherColonies(registry: Registry, plan: SplitPlan): readonly Colony[] {
  return [...registry.colonies.values()]
    .filter((colony) => isAlive(colony, plan.day) && colony.id !== plan.source)
    .sort(byLabel);
}

/** Queens in sight who head no colony, or are expected somewhere: those who can be given. */
export function queensToGive(registry: Registry, plan: SplitPlan): readonly QueenId[] {
  const source = registry.colonies.get(plan.source);
  const head = source && headOn(registry, source, plan.day)?.id;
  return [...registry.queens.values()]
    .filter(
      ({ id, state }) =>
        id !== head && (state.is === 'laying' || state.is === 'expected' || state.is === 'unknown'),
    )
    .map(({ id }) => id);
}

const TURN: readonly Compass[] = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'];

/** The next direction an entrance may look, an eighth of a turn on; after the last, not known again. */
export function turnEntrance(entrance: Compass | undefined): Compass | undefined {
  return entrance === undefined ? 'N' : TURN[TURN.indexOf(entrance) + 1];
}
