import type { PlainDay, RoughDay } from '../../journal/day.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import type { QueenState, Tenure } from '../state.ts';

/** Opening and closing the spans in which queens head colonies. One tenure stands in both histories. */

/** The queen who heads a colony by what has been applied so far; of two side by side the one who came last. */
export function headOf(draft: RegistryDraft, colony: ColonyId): QueenId | undefined {
  return draft.colonies.get(colony)?.tenures.findLast(({ to }) => to === undefined)?.queen;
}

/** Every queen who heads a colony: more than one where mother and daughter lay side by side. */
export function headsOf(draft: RegistryDraft, colony: ColonyId): readonly QueenId[] {
  const tenures = draft.colonies.get(colony)?.tenures ?? [];
  return tenures.filter(({ to }) => to === undefined).map(({ queen }) => queen);
}

/** The colony that a queen heads or is expected in. */
export function seatOf(draft: RegistryDraft, queen: QueenId): ColonyId | undefined {
  const record = draft.queens.get(queen);
  return record?.expectedIn ?? record?.tenures.findLast(({ to }) => to === undefined)?.colony;
}

/** She heads the colony from now on, and is no longer awaited anywhere. */
export function openTenure(draft: RegistryDraft, tenure: Tenure): void {
  stopExpecting(draft, tenure.queen);
  draft.changeColony(tenure.colony, (colony) => ({ ...colony, tenures: [...colony.tenures, tenure] }));
  draft.changeQueen(tenure.queen, (queen) => ({
    ...queen,
    state: { is: 'laying' },
    tenures: [...queen.tenures, tenure],
  }));
}

/** Takes back the end of a queen's last tenure, if its colony still lives: she was there all along. */
export function reopenTenure(draft: RegistryDraft, queen: QueenId): void {
  const last = draft.queens.get(queen)?.tenures.at(-1);
  if (!last || last.to === undefined || draft.colonies.get(last.colony)?.ended) return;
  const { to: _, ended: __, endDeduced: ___, ...open } = last;
  replaceTenure(draft, last, withoutDoubt(open));
  draft.changeQueen(queen, (record) => ({ ...record, state: { is: 'laying' } }));
}

/** From a day on it is in doubt whether a queen still heads her colony: another may have been seen there. */
export function doubtTenure(
  draft: RegistryDraft,
  open: Tenure,
  doubt: { readonly surelyUntil: PlainDay; readonly unmarkedSeen: RoughDay },
): void {
  replaceTenure(draft, open, { ...open, ...doubt });
}

/** Lifts the doubt from a tenure that still runs: she was there all along. */
export function liftDoubt(draft: RegistryDraft, queen: QueenId): void {
  const open = draft.queens.get(queen)?.tenures.findLast(({ to }) => to === undefined);
  if (open?.unmarkedSeen !== undefined) replaceTenure(draft, open, withoutDoubt(open));
}

function withoutDoubt({ surelyUntil: _, unmarkedSeen: __, ...tenure }: Tenure): Tenure {
  return tenure;
}

function replaceTenure(draft: RegistryDraft, old: Tenure, tenure: Tenure): void {
  const replace = (tenures: readonly Tenure[]) => tenures.map((each) => (each === old ? tenure : each));
  draft.changeColony(old.colony, (colony) => ({ ...colony, tenures: replace(colony.tenures) }));
  draft.changeQueen(old.queen, (record) => ({ ...record, tenures: replace(record.tenures) }));
}

/** Closes the open tenure of a queen, wherever she is. Nothing happens when she heads no colony. */
export function closeTenure(
  draft: RegistryDraft,
  queen: QueenId,
  end: {
    readonly to: RoughDay;
    readonly ended: NonNullable<Tenure['ended']>;
    readonly deduced?: boolean;
    readonly surelyUntil?: PlainDay | undefined;
  },
): ColonyId | undefined {
  const open = draft.queens.get(queen)?.tenures.findLast(({ to }) => to === undefined);
  if (!open) return undefined;
  const { unmarkedSeen: _, ...tenure } = open;
  const closed: Tenure = {
    ...tenure,
    to: end.to,
    ended: end.ended,
    ...(end.deduced ? { endDeduced: true } : {}),
    ...(end.surelyUntil ? { surelyUntil: end.surelyUntil } : {}),
  };
  replaceTenure(draft, open, closed);
  return open.colony;
}

/** A laying queen goes from one colony to another and lays on. Whether it is she stays as doubtful as it was. */
export function moveHead(
  draft: RegistryDraft,
  queen: QueenId,
  to: ColonyId,
  day: RoughDay,
  how: 'moved' | 'split',
): void {
  const { surelyUntil, unmarkedSeen } =
    draft.queens.get(queen)?.tenures.findLast((each) => each.to === undefined) ?? {};
  const doubt = surelyUntil && unmarkedSeen ? { surelyUntil, unmarkedSeen } : {};
  closeTenure(draft, queen, { to: day, ended: how });
  openTenure(draft, { queen, colony: to, from: day, layingFrom: day, ...doubt });
}

/** Ends a queen's life with the keeper: her tenure, or her being expected. */
export function endQueen(
  draft: RegistryDraft,
  queen: QueenId,
  state: Extract<QueenState, { is: 'gone' } | { is: 'failed' }>,
  surelyUntil?: PlainDay,
): void {
  if (state.is === 'gone') {
    const { day, cause, deduced } = state;
    closeTenure(draft, queen, { to: day, ended: cause, deduced, surelyUntil });
  }
  stopExpecting(draft, queen);
  draft.changeQueen(queen, (record) => ({ ...record, state }));
}

/** A virgin, by the records: made here or brought in as such, and never seen to lay. */
export function neverLaid(draft: RegistryDraft, id: QueenId): boolean {
  const queen = draft.queens.get(id);
  if (!queen || queen.tenures.length > 0) return false;
  const making = queen.madeBy && draft.makings.get(queen.madeBy);
  if (making && making.how !== 'brought-in') return true;
  return queen.entries.some((entry) => entry.kind === 'queen-entered' && entry.laying === false);
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

/** She is awaited in this colony and in no other. */
export function expectIn(draft: RegistryDraft, queen: QueenId, colony: ColonyId, since: RoughDay): void {
  stopExpecting(draft, queen);
  draft.changeQueen(queen, (record) => ({ ...record, expectedIn: colony, state: { is: 'expected', since } }));
  draft.changeColony(colony, (record) => ({ ...record, expected: [...record.expected, queen] }));
}
