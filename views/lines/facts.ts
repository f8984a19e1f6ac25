import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Registry } from '../../src/registry/state.ts';
import { type Life, livesOf } from './lives.ts';
import { type LineSummary, lineSummaries } from './summaries.ts';

/** The lives and lines of a registry on a day: what the drawings on every screen are made of. */
export interface LineFacts {
  readonly lives: readonly Life[];
  readonly byId: ReadonlyMap<QueenId, Life>;
  readonly lines: readonly LineSummary[];
}

const kept = new WeakMap<Registry, { readonly on: PlainDay; readonly facts: LineFacts }>();

/** Worked out once for each state of the registry and day. */
export function lineFacts(registry: Registry, on: PlainDay): LineFacts {
  const known = kept.get(registry);
  if (known?.on === on) return known.facts;
  const lives = livesOf(registry, on);
  const facts = {
    lives,
    byId: new Map(lives.map((life) => [life.id, life])),
    lines: lineSummaries(registry, lives, on),
  };
  kept.set(registry, { on, facts });
  return facts;
}
