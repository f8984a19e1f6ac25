import { type FallbackCode, fallbackText, type Task } from '../../graph/calendar/index.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { byLabel, headOn, isLiving, yardOn } from '../../src/registry/queries.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import type { FrameKind } from '../split/plan.ts';

/** What helps a colony that has no queen to come, and where doing it is written down. */
export interface Way {
  readonly fallback: FallbackCode;
  /** What is done, as on a button: "Join with a neighbour". */
  readonly name: string;
  readonly does: Doing;
}

export type Doing =
  | { readonly is: 'carry'; readonly frame: FrameKind }
  | { readonly is: 'join' }
  | { readonly is: 'end' }
  | { readonly is: 'page'; readonly href: string };

/**
 * The ways out that a task names and that can be written down, in the order in which to think of them. Where something
 * is only to be looked for, they come once it was not found; a split before a swarm is of use at once.
 */
export function waysOf({ fallbacks, colony, kind }: Task): readonly Way[] {
  return fallbacks.flatMap((fallback) => {
    if (kind !== 'do' && fallback !== 'split-first') return [];
    const does = doing(fallback, colony as ColonyId);
    return does ? [{ fallback, name: fallbackText(fallback), does }] : [];
  });
}

function doing(fallback: FallbackCode, colony: ColonyId): Doing | undefined {
  switch (fallback) {
    case 'give-young-brood':
      return { is: 'carry', frame: 'eggs' };
    case 'give-cells':
      return { is: 'carry', frame: 'cells' };
    case 'join':
      return { is: 'join' };
    case 'shake-out':
      return { is: 'end' };
    case 'give-queen':
    case 'find-and-remove-her':
      return { is: 'page', href: routes.record(colony, 'queen') };
    case 'split-first':
      return { is: 'page', href: routes.planSplit(colony) };
    case 'look-again':
      return undefined;
  }
}

/** Hives that such a frame can come from: eggs from where a queen lays, cells from where they are raised; those of the same yard first. */
export function giversTo(registry: Registry, to: Colony, frame: FrameKind, on: PlainDay): readonly Colony[] {
  const has = (colony: Colony) => {
    const headed = headOn(registry, colony, on) !== undefined;
    return frame === 'cells' ? !headed && colony.expected.length > 0 : headed;
  };
  const here = (colony: Colony) => Number(yardOn(colony, on) === yardOn(to, on));
  return [...registry.colonies.values()]
    .filter((colony) => colony.id !== to.id && isLiving(colony, on) && has(colony))
    .sort((a, b) => here(b) - here(a) || byLabel(a, b));
}
