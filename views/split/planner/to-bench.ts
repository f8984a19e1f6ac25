import type { CombFrame } from '../../../graph/increase/comb.ts';
import type { SplitPart } from '../../../graph/increase/parts.ts';
import type { PlainDay } from '../../../src/journal/day.ts';
import type { FrameCounts } from '../../../src/journal/entry-parts.ts';
import { tenureOn } from '../../../src/registry/queries.ts';
import type { Colony, Registry } from '../../../src/registry/state.ts';
import { addPart, type FrameKind, SOURCE, type SplitPlan, startPlan } from '../plan.ts';

/** A planned partition laid on the bench: parts, frames by kind, and the old queen in her part; nothing is written yet. */
export function toBench(
  parts: readonly SplitPart[],
  { registry, source, day, newId }: BenchInput,
): SplitPlan {
  let plan = startPlan(registry, source, day, newId);
  while (plan.parts.length < parts.length) plan = addPart(plan, registry, newId);
  const keys = plan.parts.map(({ key }) => key);
  const withQueen = parts.findIndex(({ queen }) => queen === 'old-queen');
  const laid = plan.parts.map((part, at) => {
    const planned = parts[at];
    if (!planned) return part;
    return { ...part, frames: at === 0 ? shaken(planned) : { ...frameKinds(planned), ...shaken(planned) } };
  });
  return {
    ...plan,
    parts: laid,
    ...(tenureOn(source, day) ? { oldQueenIn: keys[withQueen] ?? SOURCE } : {}),
  };
}

export interface BenchInput {
  readonly registry: Registry;
  readonly source: Colony;
  readonly day: PlainDay;
  readonly newId: () => string;
}

/**
 * Frames of a part by kind, as the bench counts them. In a part that raises a queen the frame with the most open brood
 * and eggs is the one she comes from; every other goes by what most of it is.
 */
export function frameKinds({ frames, queen }: SplitPart): FrameCounts {
  const raisedFrom = queen === 'raises' ? youngest(frames) : undefined;
  const counts: Partial<Record<FrameKind, number>> = {};
  for (const frame of frames) {
    const kind = frame === raisedFrom ? 'eggs' : kindOf(frame);
    counts[kind] = (counts[kind] ?? 0) + 1;
  }
  return counts;
}

function youngest(frames: readonly CombFrame[]): CombFrame | undefined {
  if (frames.some(({ cells }) => cells)) return undefined;
  return frames
    .filter(({ eggs }) => eggs)
    .reduce<CombFrame | undefined>(
      (best, frame) => (best === undefined || frame.openBrood > best.openBrood ? frame : best),
      undefined,
    );
}

function kindOf({ cells, openBrood, cappedBrood, stores }: CombFrame): FrameKind {
  if (cells) return 'cells';
  if (openBrood + cappedBrood > 0) return openBrood > cappedBrood ? 'openBrood' : 'emergingBrood';
  return stores >= 0.5 ? 'stores' : 'drawnComb';
}

/** Frames of bees shaken in, to the half. */
function shaken({ shakenFrom = [] }: SplitPart): FrameCounts {
  const bees = Math.round(2 * shakenFrom.reduce((sum, frame) => sum + frame.bees, 0)) / 2;
  return bees > 0 ? { shakenBees: bees } : {};
}
