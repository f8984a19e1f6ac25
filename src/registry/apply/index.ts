import type { Entry, EntryKind, EntryOf } from '../../journal/entry.ts';
import type { ColonyId } from '../../journal/ids.ts';
import type { RegistryDraft } from '../draft.ts';
import { livingColony } from './checks.ts';
import { applyMating, applyParentageStated, applyQueenMarked, applyQueenNamed } from './facts.ts';
import { applyCellsGiven, applyEggsGiven, applyGraft } from './increase.ts';
import { applyColoniesJoined } from './joining.ts';
import {
  applyColonyEnded,
  applyColonyMoved,
  applyColonyRelabelled,
  applyColonyStarted,
  applyDroneBackground,
  applyFramesMoved,
  applyTreatment,
  applyTreatmentEnded,
  applyWinterOutcome,
  applyYardOpened,
  fileWithHead,
} from './places.ts';
import { applyQueenEntered, applyQueenExpected, applyQueenFound } from './queens.ts';
import { applyInspection, applyTaskSettled } from './sightings.ts';
import { applySplit } from './split.ts';
import { applyQueenConfirmed, applyQueenLost, applyQueenMoved } from './succession.ts';

type Handlers = { readonly [K in EntryKind]: (draft: RegistryDraft, entry: EntryOf<K>) => void };

/** What an entry does to the registry besides standing in the colony's and its queen's history. */
function observe(draft: RegistryDraft, entry: Extract<Entry, { readonly colony: ColonyId }>): void {
  if (livingColony(draft, entry, entry.colony)) fileWithHead(draft, entry, entry.colony);
}

/** Every kind of entry has its handler; the compiler refuses a kind that was forgotten. */
const HANDLERS: Handlers = {
  'yard-opened': applyYardOpened,
  'drone-background': applyDroneBackground,
  'colony-started': applyColonyStarted,
  'colony-moved': applyColonyMoved,
  'colony-relabelled': applyColonyRelabelled,
  'colonies-joined': applyColoniesJoined,
  'colony-ended': applyColonyEnded,
  'frames-moved': applyFramesMoved,
  'queen-entered': applyQueenEntered,
  'queen-expected': applyQueenExpected,
  'queen-found': applyQueenFound,
  'queen-confirmed': applyQueenConfirmed,
  'queen-marked': applyQueenMarked,
  'queen-named': applyQueenNamed,
  'queen-lost': applyQueenLost,
  'queen-moved': applyQueenMoved,
  'parentage-stated': applyParentageStated,
  mating: applyMating,
  split: applySplit,
  'cells-given': applyCellsGiven,
  'eggs-given': applyEggsGiven,
  graft: applyGraft,
  treatment: applyTreatment,
  'treatment-ended': applyTreatmentEnded,
  'winter-outcome': applyWinterOutcome,
  inspection: applyInspection,
  'mite-count': observe,
  'hygienic-test': observe,
  harvest: observe,
  feeding: observe,
  'task-settled': applyTaskSettled,
  note: (draft, entry) => {
    if (entry.about?.of === 'colony') draft.file(entry, { colonies: [entry.about.colony] });
    if (entry.about?.of === 'queen') draft.file(entry, { queens: [entry.about.queen] });
  },
  'keeper-named': (draft, entry) => draft.keepers.set(entry.keeper, entry.name),
  withdrawal: () => {
    throw new Error('A withdrawal never reaches the registry: it only decides which entries are live.');
  },
};

/** Applies one entry to a registry in the making. Entries come in order. */
export function apply(draft: RegistryDraft, entry: Entry): void {
  draft.entries.push(entry);
  // The table is total over kinds and each handler takes its own kind, which the compiler cannot see for a union.
  const handle = HANDLERS[entry.kind] as (draft: RegistryDraft, entry: Entry) => void;
  handle(draft, entry);
}
