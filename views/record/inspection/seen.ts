import type { RoughDay } from '../../../src/journal/day.ts';
import type { Draft, EntryOf } from '../../../src/journal/entry.ts';
import type { ColonyId, QueenId } from '../../../src/journal/ids.ts';
import { newQueenId } from '../../../src/journal/new-ids.ts';
import { markLost } from '../../../src/registry/unmarked.ts';

type Inspection = EntryOf<'inspection'>;
type Base =
  | 'id'
  | 'action'
  | 'recordedAt'
  | 'recordedBy'
  | 'supersedes'
  | 'overruled'
  | 'remark'
  | 'kind'
  | 'colony'
  | 'day';

/** What was seen at one look into a hive, as far as it was tapped; and what follows from it for the queens. */
export interface Look {
  readonly day?: RoughDay;
  readonly seen: { readonly [K in keyof Omit<Inspection, Base>]?: Inspection[K] | undefined };
  /** The expected queen who is taken to lay these eggs. */
  readonly lays?: QueenId | undefined;
  /** The unmarked queen is taken for another one than the one known here; false: that one has lost her mark. */
  readonly another?: boolean | undefined;
}

export const NOTHING_SEEN: Look = { seen: {} };

/** The entries of a look: the inspection, and a queen confirmed or found where the keeper says so. */
export function lookDrafts(
  look: Look,
  colony: ColonyId,
  day: RoughDay,
  head: QueenId | undefined,
): readonly Draft[] | undefined {
  const known = Object.entries(look.seen).filter(([, value]) => isSaid(value));
  if (known.length === 0) return undefined;
  const inspection = { kind: 'inspection', day, colony, ...Object.fromEntries(known) } as Draft<'inspection'>;
  const drafts: Draft[] = [inspection];
  if (look.lays) drafts.push({ kind: 'queen-confirmed', day, queen: look.lays, colony, seen: 'eggs' });
  if (look.another) {
    drafts.push({
      kind: 'queen-found',
      day,
      queen: newQueenId(),
      colony,
      ...(head ? { insteadOf: head } : {}),
    });
  }
  if (look.another === false && head) drafts.push(markLost(colony, head, day));
  return drafts;
}

function isSaid(value: unknown): boolean {
  if (typeof value === 'string') return value.trim() !== '';
  if (Array.isArray(value)) return value.length > 0;
  return value !== undefined;
}
