import { firstDay, lastDay } from '../../journal/day.ts';
import { winterYears } from '../../journal/day-words.ts';
import type { LossCause } from '../../journal/entries/colony.ts';
import type { QueenLossCause } from '../../journal/entries/queen.ts';
import type { Entry, EntryOf } from '../../journal/entry.ts';
import type { ColonyId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import { type Colony, droneKey } from '../state.ts';
import { livingColony } from './checks.ts';
import { endQueen, headOf, headsOf } from './tenures.ts';

/** Yards, colonies and what becomes of them. */

export function applyYardOpened(draft: RegistryDraft, entry: EntryOf<'yard-opened'>): void {
  draft.yards.set(entry.yard, {
    id: entry.yard,
    name: entry.name,
    opened: entry.day,
    ...(entry.where ? { where: entry.where } : {}),
    ...(entry.roundOrder === undefined ? {} : { roundOrder: entry.roundOrder }),
  });
}

/** The drones of a yard and season; the last said of a season holds. */
export function applyDroneBackground(draft: RegistryDraft, entry: EntryOf<'drone-background'>): void {
  checkYard(draft, entry, entry.yard);
  draft.droneBackgrounds.set(droneKey(entry.yard, entry.season), entry);
}

function checkYard(draft: RegistryDraft, entry: Entry, yard: EntryOf<'yard-opened'>['yard']): void {
  if (draft.yards.get(yard)) return;
  draft.contradict(entry, 'yard-unknown', {
    found: `${entry.day}, before any entry that opens this yard`,
    because: 'There is no such yard on this day.',
    remedies: ['Enter the opening of the yard, or give it an earlier day.', 'Choose another yard.'],
  });
}

/** A colony begins, with its first stay and its first label. */
export function applyColonyStarted(draft: RegistryDraft, entry: EntryOf<'colony-started'>): void {
  const known = draft.colonies.get(entry.colony);
  if (known) {
    draft.contradict(entry, 'colony-started-twice', {
      colony: entry.colony,
      found: `started on ${known.started} already`,
      because: 'A colony is started once.',
      remedies: ['Take one of the two entries back.', 'Enter this as a new colony.'],
    });
    return;
  }
  checkYard(draft, entry, entry.yard);
  draft.colonies.set(entry.colony, {
    id: entry.colony,
    label: entry.label,
    labels: [{ label: entry.label, from: entry.day }],
    stays: [{ yard: entry.yard, from: entry.day, ...(entry.place ? { place: entry.place } : {}) }],
    started: entry.day,
    how: entry.how,
    tenures: [],
    expected: [],
    entries: [entry],
  });
}

/** A stay at another yard, from that day on. */
export function applyColonyMoved(draft: RegistryDraft, entry: EntryOf<'colony-moved'>): void {
  if (!livingColony(draft, entry, entry.colony)) return;
  checkYard(draft, entry, entry.yard);
  const stay = { yard: entry.yard, from: entry.day, ...(entry.place ? { place: entry.place } : {}) };
  draft.changeColony(entry.colony, (colony) => ({ ...colony, stays: [...colony.stays, stay] }));
  draft.file(entry, { colonies: [entry.colony] });
}

/** Another label on the box: the colony stays itself. */
export function applyColonyRelabelled(draft: RegistryDraft, entry: EntryOf<'colony-relabelled'>): void {
  if (!livingColony(draft, entry, entry.colony)) return;
  draft.changeColony(entry.colony, (colony) => ({
    ...colony,
    label: entry.label,
    labels: [...colony.labels, { label: entry.label, from: entry.day }],
  }));
  draft.file(entry, { colonies: [entry.colony] });
}

/** What the end of a colony means for the queen who headed it. */
const QUEEN_ENDS_WITH: Partial<Record<LossCause, QueenLossCause>> = {
  'swarmed-out': 'swarmed',
  sold: 'given-away',
  given: 'given-away',
};

/**
 * Ends a colony with its queen and the queens expected in it. A winter found lost in spring and the loss entered by
 * itself are one end: the second adds to the history and contradicts nothing.
 */
function endColony(draft: RegistryDraft, entry: Entry, colony: ColonyId, cause: LossCause): void {
  const record = draft.colonies.get(colony);
  if (!record) return;
  if (record.ended) {
    draft.file(entry, { colonies: [colony] });
    return;
  }
  const heads = headsOf(draft, colony);
  const lost = QUEEN_ENDS_WITH[cause] ?? 'died-with-colony';
  draft.changeColony(colony, (each) => ({ ...each, ended: { day: entry.day, cause, entry: entry.id } }));
  draft.file(entry, { colonies: [colony], queens: heads });
  for (const queen of heads)
    endQueen(draft, queen, { is: 'gone', day: entry.day, cause: lost, deduced: false });
  for (const queen of record.expected) {
    const given = lost === 'given-away';
    const state = given ? ({ is: 'gone', deduced: false } as const) : ({ is: 'failed' } as const);
    endQueen(draft, queen, { ...state, day: entry.day, cause: given ? lost : 'died-with-colony' });
  }
}

/** A colony ends by its cause. One that a winter outcome ended already only gets its cause told. */
export function applyColonyEnded(draft: RegistryDraft, entry: EntryOf<'colony-ended'>): void {
  const colony = draft.colonies.get(entry.colony);
  const endedByWinter =
    colony?.ended &&
    colony.entries.some(({ kind, id }) => kind === 'winter-outcome' && id === colony.ended?.entry);
  if (!endedByWinter && !livingColony(draft, entry, entry.colony)) return;
  endColony(draft, entry, entry.colony, entry.cause);
}

/** Frames between colonies change no queen; both histories tell of them. */
export function applyFramesMoved(draft: RegistryDraft, entry: EntryOf<'frames-moved'>): void {
  livingColony(draft, entry, entry.from);
  livingColony(draft, entry, entry.to);
  draft.file(entry, { colonies: [entry.from, entry.to] });
}

/** A treatment begins in each of its colonies. */
export function applyTreatment(draft: RegistryDraft, entry: EntryOf<'treatment'>): void {
  for (const colony of entry.colonies) livingColony(draft, entry, colony);
  if (entry.end && entry.end < firstDay(entry.day)) {
    draft.contradict(entry, 'treatment-unknown', {
      found: `begun on ${entry.day}, last day ${entry.end}`,
      because: 'A treatment cannot end before it began.',
      remedies: ['Correct its last day, or leave it out.', 'Correct the day on which it began.'],
    });
  }
  const id = draft.firstVersion(entry.id);
  draft.treatments.set(id, {
    id,
    entry,
    colonies: entry.colonies,
    from: entry.day,
    ...(entry.end ? { to: entry.end } : {}),
  });
  draft.file(entry, { colonies: entry.colonies });
}

/** A treatment is taken out. */
export function applyTreatmentEnded(draft: RegistryDraft, entry: EntryOf<'treatment-ended'>): void {
  const id = draft.firstVersion(entry.treatment);
  const treatment = draft.treatments.get(id);
  if (!treatment || lastDay(entry.day) < firstDay(treatment.from)) {
    draft.contradict(entry, 'treatment-unknown', {
      found: treatment ? `treatment begun on ${treatment.from}` : 'no treatment of that record',
      because: 'This ends a treatment that had not begun.',
      remedies: ['Enter the treatment first.', 'Correct the day.'],
    });
    return;
  }
  draft.treatments.set(id, { ...treatment, to: entry.day });
  draft.file(entry, { colonies: treatment.colonies });
}

/** Colonies lost from this day of the year on are counted among the losses of the winter to come. */
const WINTER_REACHES_BACK = '-09-01';

/** Beginnings of which the bees were no colony the winter before. */
const NEW_COLONY: ReadonlySet<Colony['how']> = new Set<Colony['how']>(['split', 'swarm-taken', 'package']);

/** Says so when a colony is said to have gone through a winter before it began: often the year of the autumn. */
function checkWinter(draft: RegistryDraft, entry: EntryOf<'winter-outcome'>, colony: Colony): void {
  const spring = `${entry.winter}-03-01`;
  if (!NEW_COLONY.has(colony.how) || firstDay(colony.started) <= spring) return;
  draft.contradict(entry, 'colony-not-started', {
    colony: colony.id,
    found: `${colony.label} began on ${colony.started}`,
    because: `It was no colony yet in the winter ${winterYears(entry.winter)}.`,
    remedies: [
      'Choose the winter by the year of its spring.',
      'Correct the day or the way in which the colony began.',
    ],
  });
}

/** Alive, or dead: then the winter ends the colony. */
export function applyWinterOutcome(draft: RegistryDraft, entry: EntryOf<'winter-outcome'>): void {
  const colony = draft.colonies.get(entry.colony);
  if (colony) checkWinter(draft, entry, colony);
  if (entry.alive) {
    if (livingColony(draft, entry, entry.colony)) fileWithHead(draft, entry, entry.colony);
  } else if (colony?.ended && lastDay(colony.ended.day) >= `${entry.winter - 1}${WINTER_REACHES_BACK}`) {
    draft.file(entry, { colonies: [entry.colony] });
  } else if (livingColony(draft, entry, entry.colony)) {
    endColony(draft, entry, entry.colony, entry.cause ?? 'winter');
  }
}

/** Files an observation with the colony and with the queen who heads it. */
export function fileWithHead(draft: RegistryDraft, entry: Entry, colony: ColonyId): void {
  const head = headOf(draft, colony);
  draft.file(entry, { colonies: [colony], queens: head ? [head] : [] });
}
