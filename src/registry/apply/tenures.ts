import type { RoughDay } from '../../journal/day.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { QueenState, Tenure } from '../state.ts';

/** Opening and closing the spans in which queens head colonies. One tenure stands in both histories. */

/** The queen who heads a colony by what has been applied so far. */
export function headOf(draft: RegistryDraft, colony: ColonyId): QueenId | undefined {
  return draft.colonies.get(colony)?.tenures.findLast(({ to }) => to === undefined)?.queen;
}

export function openTenure(draft: RegistryDraft, tenure: Tenure): void {
  draft.changeColony(tenure.colony, (colony) => ({
    ...colony,
    tenures: [...colony.tenures, tenure],
    expected: colony.expected.filter((id) => id !== tenure.queen),
  }));
  draft.changeQueen(tenure.queen, ({ expectedIn: _, ...queen }) => ({
    ...queen,
    state: { is: 'laying' },
    tenures: [...queen.tenures, tenure],
  }));
}

/** Closes the open tenure of a queen, wherever she is. Nothing happens when she heads no colony. */
export function closeTenure(
  draft: RegistryDraft,
  queen: QueenId,
  end: { readonly to: RoughDay; readonly ended: NonNullable<Tenure['ended']>; readonly deduced?: boolean },
): ColonyId | undefined {
  const open = draft.queens.get(queen)?.tenures.findLast(({ to }) => to === undefined);
  if (!open) return undefined;
  const closed: Tenure = {
    ...open,
    to: end.to,
    ended: end.ended,
    ...(end.deduced ? { endDeduced: true } : {}),
  };
  const replace = (tenures: readonly Tenure[]) =>
    tenures.map((tenure) => (tenure === open ? closed : tenure));
  draft.changeColony(open.colony, (colony) => ({ ...colony, tenures: replace(colony.tenures) }));
  draft.changeQueen(queen, (record) => ({ ...record, tenures: replace(record.tenures) }));
  return open.colony;
}

/** Ends a queen's life with the keeper: her tenure, or her being expected. */
export function endQueen(
  draft: RegistryDraft,
  queen: QueenId,
  state: Extract<QueenState, { is: 'gone' } | { is: 'failed' }>,
): void {
  if (state.is === 'gone') {
    closeTenure(draft, queen, { to: state.day, ended: state.cause, deduced: state.deduced });
  }
  stopExpecting(draft, queen);
  draft.changeQueen(queen, (record) => ({ ...record, state }));
}

/** Takes a queen off the list of those on their way in a colony. */
export function stopExpecting(draft: RegistryDraft, queen: QueenId): void {
  const colony = draft.queens.get(queen)?.expectedIn;
  if (!colony) return;
  draft.changeColony(colony, (record) => ({
    ...record,
    expected: record.expected.filter((id) => id !== queen),
  }));
  draft.changeQueen(queen, ({ expectedIn: _, ...record }) => record);
}

export function expectIn(draft: RegistryDraft, queen: QueenId, colony: ColonyId, since: RoughDay): void {
  stopExpecting(draft, queen);
  draft.changeQueen(queen, (record) => ({ ...record, expectedIn: colony, state: { is: 'expected', since } }));
  draft.changeColony(colony, (record) => ({ ...record, expected: [...record.expected, queen] }));
}
