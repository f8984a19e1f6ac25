import { firstDay, type RoughDay } from '../../src/journal/day.ts';
import type { Draft } from '../../src/journal/entry.ts';
import type { Registry, Yard } from '../../src/registry/state.ts';

/** True when a colony is said to have stood in a yard before the records open it. */
export function isBeforeYard(yard: Yard, day: RoughDay): boolean {
  return firstDay(day) < firstDay(yard.opened);
}

/** A colony older than its yard shows that the yard is older too: the correction that says so, or nothing. */
export function openedBy(registry: Registry, yard: Yard, day: RoughDay): readonly Draft[] {
  const opening = registry.entries.findLast(
    (entry) => entry.kind === 'yard-opened' && entry.yard === yard.id,
  );
  if (opening?.kind !== 'yard-opened' || !isBeforeYard(yard, day)) return [];
  const { id, action: _action, recordedAt: _at, recordedBy: _by, supersedes: _before, ...said } = opening;
  return [{ ...said, day, supersedes: id }];
}
