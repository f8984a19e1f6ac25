import type { RoughDay } from '../../src/journal/day.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';

/** A queen who was on her way in a colony: from when, until when, and how it ended. */
export interface Waiting {
  readonly queen: QueenId;
  readonly from: RoughDay;
  /** Absent while she is still expected. */
  readonly to?: RoughDay;
  readonly came: boolean;
}

/** Every queen that was expected in a colony, by the entries that made her. */
export function waitingOf(colony: Colony, registry: Registry): readonly Waiting[] {
  return colony.entries.flatMap((entry) =>
    expectedBy(entry, colony).map((queen) => {
      const tenure = colony.tenures.find((each) => each.queen === queen);
      const state = registry.queens.get(queen)?.state;
      const to = tenure?.from ?? (state?.is === 'failed' || state?.is === 'gone' ? state.day : undefined);
      return { queen, from: entry.day, came: tenure !== undefined, ...(to ? { to } : {}) };
    }),
  );
}

function expectedBy(entry: Entry, colony: Colony): readonly QueenId[] {
  switch (entry.kind) {
    case 'split':
      return entry.parts.flatMap(({ colony: part, queen }) =>
        part === colony.id && 'expected' in queen ? [queen.expected] : [],
      );
    case 'cells-given':
    case 'eggs-given':
      return entry.to === colony.id ? [entry.expected] : [];
    case 'queen-expected':
      return entry.colony === colony.id ? [entry.queen] : [];
    case 'queen-entered':
      return entry.colony === colony.id && entry.laying === false ? [entry.queen] : [];
    default:
      return [];
  }
}
