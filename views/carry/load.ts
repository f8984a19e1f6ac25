import type { PlainDay } from '../../src/journal/day.ts';
import type { CellAge } from '../../src/journal/entries/increase.ts';
import type { Draft } from '../../src/journal/entry.ts';
import type { FrameCounts, Parentage } from '../../src/journal/entry-parts.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { OLDEST_DAYS, whoseEggs } from '../../src/registry/brood.ts';
import { headOn } from '../../src/registry/queries.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import type { FrameKind } from '../split/plan.ts';

/** Frames on their way from one colony to others. Provenance follows the brood, not the box. */
export interface Load {
  readonly from: ColonyId;
  readonly day: PlainDay;
  readonly to: readonly Delivery[];
}

export interface Delivery {
  readonly colony: ColonyId;
  readonly frames: FrameCounts;
  /** How far along the cells are, where a frame of cells is carried. */
  readonly cellAge: CellAge;
  /** The queen expected of these cells or eggs; fixed, so that checks are stable. */
  readonly expected: QueenId;
  readonly aboveExcluder?: boolean;
}

/** So many frames of a kind more (or fewer) to a colony. */
export function deliver(
  load: Load,
  colony: ColonyId,
  kind: FrameKind,
  by: number,
  newId: () => string,
): Load {
  const known = load.to.find((each) => each.colony === colony);
  const delivery = known ?? { colony, frames: {}, cellAge: 'unknown' as const, expected: newId() as QueenId };
  const { [kind]: count = 0, ...others } = delivery.frames;
  const next = Math.max(0, count + by);
  const frames = next === 0 ? others : { ...others, [kind]: next };
  const rest = load.to.filter((each) => each.colony !== colony);
  return { ...load, to: Object.keys(frames).length === 0 ? rest : [...rest, { ...delivery, frames }] };
}

/** What else is said of a delivery: its cells, its shaken bees. */
export function changeDelivery(load: Load, colony: ColonyId, change: Partial<Delivery>): Load {
  return { ...load, to: load.to.map((each) => (each.colony === colony ? { ...each, ...change } : each)) };
}

/** What a delivery is: queen cells, eggs to raise a queen from, or frames that make no queen. */
export type Purpose = 'cells' | 'eggs' | 'frames';

/** Cells make a queen anywhere; eggs only where nobody heads the colony; the rest is strength. */
export function purposeOf(registry: Registry, delivery: Delivery, day: PlainDay): Purpose {
  if (delivery.frames.cells) return 'cells';
  const colony = registry.colonies.get(delivery.colony);
  const headed = colony && headOn(registry, colony, day) !== undefined;
  return delivery.frames.eggs && !headed ? 'eggs' : 'frames';
}

/** Who laid what is carried: whoever headed the colony it hung in when the eggs were laid. */
export function layersOf(registry: Registry, load: Load, purpose: Purpose): Parentage {
  const oldest = purpose === 'cells' ? OLDEST_DAYS.cells : OLDEST_DAYS.eggs;
  const dams = whoseEggs(registry, load.from, load.day, { youngest: purpose === 'cells' ? 3 : 0, oldest });
  return { dams: [...dams], evidence: dams.length === 1 ? 'eggs-named' : 'dam-in-colony' };
}

/** The entries that one confirmation writes. */
export function loadDrafts(load: Load, registry: Registry): readonly Draft[] {
  const base = { day: load.day, from: load.from };
  return load.to.flatMap((delivery): Draft[] => {
    const purpose = purposeOf(registry, delivery, load.day);
    const frames: Draft = {
      ...base,
      kind: 'frames-moved',
      to: delivery.colony,
      frames: delivery.frames,
      ...(delivery.aboveExcluder ? { aboveExcluder: true } : {}),
    };
    if (purpose === 'frames') return [frames];
    const parentage = layersOf(registry, load, purpose);
    const queen: Draft =
      purpose === 'cells'
        ? {
            ...base,
            kind: 'cells-given',
            to: delivery.colony,
            expected: delivery.expected,
            parentage,
            age: delivery.cellAge,
          }
        : { ...base, kind: 'eggs-given', to: delivery.colony, expected: delivery.expected, parentage };
    return [frames, queen];
  });
}

/** Colonies that frames can be carried to: alive, not the one they come from; the one meant, then those of the same yard. */
export function receivers(colonies: readonly Colony[], from: Colony, meant?: Colony): readonly Colony[] {
  const yard = from.stays.at(-1)?.yard;
  const others = colonies.filter(({ id }) => id !== from.id && id !== meant?.id);
  const here = others.filter((colony) => colony.stays.at(-1)?.yard === yard);
  const elsewhere = others.filter((colony) => colony.stays.at(-1)?.yard !== yard);
  return [...(meant ? [meant] : []), ...here, ...elsewhere];
}
