/**
 * The words for the codes of the calendar, in a keeper's plain English. Tables only; sentences.ts joins them.
 * Sources: what a sight means and what helps are common practice (no source) unless biology.ts says otherwise.
 */
import type { ContradictionCode } from './contradiction.ts';
import type { ReadingCode } from './readings.ts';
import type { StateCode } from './state.ts';
import type { FallbackCode, FindingCode, TaskCode } from './task.ts';

export const STATE_WORDS: Readonly<Record<StateCode, string>> = {
  cells: 'Raising a queen; cells still open.',
  'capped-cells': 'Capped queen cells.',
  virgin: 'A virgin, not yet flying.',
  mating: 'A virgin on her mating flights, or just mated.',
  introduced: 'A queen given; not yet seen to lay.',
  'eggs-due': 'Eggs are due.',
  overdue: 'Eggs are overdue.',
  laying: 'Laying.',
  'old-queen': 'The old queen seems to be here.',
  queenless: 'No queen, and none on the way.',
  'drone-layer': 'A queen who lays drones only.',
  'laying-workers': 'Laying workers.',
};

export const TASK_WORDS: Readonly<Record<TaskCode, { readonly title: string; readonly what: string }>> = {
  'look-for-taken-grafts': { title: 'Count the grafts taken', what: 'count the cells that have been begun' },
  'look-for-cells': { title: 'Look for queen cells', what: 'look for queen cells' },
  'leave-closed': {
    title: 'Leave closed',
    what: 'leave closed: a virgin is about to emerge or to fly, and may be lost if the hive is opened',
  },
  'look-for-release': { title: 'Look whether she is free', what: 'look whether the queen has left her cage' },
  'look-for-eggs': { title: 'Look for eggs', what: 'look for eggs, one to a cell' },
  'look-for-worker-brood': {
    title: 'Look at her brood',
    what: 'look at her capped brood: it must be worker brood, in a close patch',
  },
  'mark-queen': { title: 'Mark her', what: 'find the new queen and mark her' },
  'look-for-queen': {
    title: 'Find the queen',
    what: 'find the queen, and see whether she is the old or a new one',
  },
  'help-queenless': { title: 'Help: no queen on the way', what: 'help this colony to a queen, or join it' },
  'end-laying-workers': { title: 'Laying workers', what: 'decide what to do with the laying workers' },
  'replace-drone-layer': { title: 'Queen lays drones only', what: 'replace the queen, or join the colony' },
  'her-records-begin': {
    title: 'Her own workers',
    what: 'all workers become her daughters; before then, temper and mites speak for the queen before her',
  },
  'swarm-check': { title: 'Look for swarm cells', what: 'look for cups with eggs and for cells' },
  'mite-count': { title: 'Count mites', what: 'take a mite count' },
  'autumn-preparation': {
    title: 'Prepare for winter',
    what: 'see to strength, stores, mites and the queen before winter',
  },
  'winter-outcome': { title: 'Alive after winter?', what: 'record whether the colony came through winter' },
  'spring-strength': { title: 'Strength in spring', what: 'record frames of bees and of brood' },
  'end-treatment': { title: 'End the treatment', what: 'take the treatment out, as its label says' },
  'honey-wait': {
    title: 'Wait before honey',
    what: 'honey may be taken again, by the wait that the label gives',
  },
};

/** Said of a look that is past its last useful day. */
export const TOO_LATE: Readonly<Partial<Record<TaskCode, string>>> = {
  'look-for-cells': 'Too late to open for it now: leave it shut until eggs can be looked for.',
  'look-for-eggs': 'The day to wait for is past: no eggs now means no queen.',
};

/** Shown with the task, where the work can hurt somebody. */
export const CAUTIONS: Readonly<Partial<Record<TaskCode | FallbackCode, string>>> = {
  'mite-count':
    'Alcohol burns easily and kills the bees in the sample. Make sure the queen is not among them.',
  'end-treatment':
    'The label and the rules of your country decide how long it stays and when honey may be taken.',
  'honey-wait': 'The label decides. Where the label and this record differ, the label is right.',
  'winter-outcome':
    'Close dead hives against robbing. If brood disease is possible, ask the bee inspector first.',
  'give-young-brood': 'Brood and combs carry disease: take them from a healthy colony only.',
  join: 'Join healthy colonies only: disease and mites come along.',
  'shake-out': 'Wear a veil: many bees fly at once. Shake out only where no disease is suspected.',
};

export const FALLBACK_WORDS: Readonly<Record<FallbackCode, string>> = {
  'give-young-brood': 'give a frame with eggs and young larvae',
  'give-cells': 'give ripe queen cells',
  'give-queen': 'give a queen',
  join: 'join with a neighbour',
  'look-again': 'look again in about a week',
  'shake-out': 'shake the bees out before strong neighbours and take the hive away',
  'find-and-remove-her': 'find her and take her out',
  'split-first': 'where there are cells, split this colony before the others',
};

export const FINDING_WORDS: Readonly<Record<FindingCode, string>> = {
  'cells-open': 'Open cells, none capped',
  'cells-capped': 'Capped cells',
  'no-cells': 'No cells',
  'cell-emerged': 'A cell opened at its tip',
  'cells-torn': 'Cells torn at the side, none left',
  virgin: 'A virgin',
  eggs: 'Eggs',
  'queen-laying': 'New queen and eggs',
  'no-eggs': 'No eggs',
  'no-brood': 'No eggs, no open brood',
  'several-eggs': 'Several eggs in cells',
  'drone-brood-only': 'Drone brood only',
  'worker-brood': 'Capped worker brood',
  'old-queen': 'The old queen',
  'new-queen': 'Another queen',
  'queen-free': 'She is out and accepted',
  'queen-dead': 'She is dead',
  'swarm-cells': 'Cells, or cups with eggs',
  'no-swarm-signs': 'No signs',
  done: 'Done',
  alive: 'Alive',
  dead: 'Dead',
};

/** What a finding means, whatever the task; the calendar then says what follows. */
export const FINDING_MEANS: Readonly<Record<FindingCode, string>> = {
  'cells-open': 'A queen is being raised. She emerges a week or more from now.',
  'cells-capped':
    'A queen is being raised and emerges within nine days. Handle these frames gently and do not shake them.',
  'no-cells':
    'Nothing is being raised that can be seen: there may be a queen here after all, or nothing to raise one from.',
  'cell-emerged': 'A virgin is out. Close the hive and leave it.',
  'cells-torn': 'A virgin is likely out and has done away with the others; an old queen does the same.',
  virgin: 'She is out and not yet laying. Close the hive and leave it.',
  eggs: 'A queen lays here, if they stand singly on the bottom of the cells and this is not too early for a new one.',
  'queen-laying': 'The new queen lays.',
  'no-eggs': 'She does not lay yet, or she is not there. It means nothing before her time and much after it.',
  'no-brood': 'Nobody has laid here for four days or more.',
  'several-eggs':
    'A young queen in her first days does this; so do workers in a colony long without a queen.',
  'drone-brood-only': 'The queen is unmated or spent, or workers lay.',
  'worker-brood': 'She is mated and lays well enough to be marked.',
  'old-queen': 'No new queen was needed here. See which part of the split went without.',
  'new-queen': 'The colony has a new queen; eggs will tell whether she lays.',
  'queen-free': 'She is accepted. Eggs are due within days.',
  'queen-dead': 'She was not accepted. See whether the colony raises its own.',
  'swarm-cells': 'They get ready to swarm, or replace their queen. Split before the first cell is capped.',
  'no-swarm-signs': 'Nothing to do until the next look.',
  done: 'Recorded as done.',
  alive: 'It came through. Its queen and her line are counted as survivors of this winter.',
  dead: 'It did not come through. Record the likely cause while it is fresh.',
};

export const READING_WORDS: Readonly<Record<ReadingCode, string>> = {
  'as-recorded': 'all is as recorded',
  'cells-older':
    'the cells are older than the split: they were getting ready to swarm or to replace their queen',
  'queen-overlooked': 'a queen was overlooked and is in this part',
  'first-virgin-left': 'the first virgin left with a swarm, or died, and a later one heads the colony',
  'replaced-since': 'the queen is being replaced, or they get ready to swarm',
  'not-accepted': 'the queen given was not accepted, and they raise their own',
  'late-start': 'she was kept from mating for long and is very late',
  'drone-layer': 'the queen is unmated or her sperm is spent',
  'laying-workers': 'workers lay: the colony has long been without a queen',
  'gone-since': 'the queen laid and has been lost since',
  lost: 'the queen was lost before she came to lay',
};

export const CONTRADICTION_WORDS: Readonly<Record<ContradictionCode, string>> = {
  'cells-too-early': 'Queen cells were seen before any can hang here',
  'cells-too-late': 'Queen cells were seen when the last of them must have emerged',
  'cells-gone': 'The cells were gone before a queen can have emerged',
  'virgin-too-early': 'A queen had emerged before her time',
  'virgin-too-late': 'A virgin was seen after eggs had been',
  'not-emerged-in-time': 'No cell had emerged when one must have',
  'eggs-too-early': 'Eggs or brood were seen before the new queen can have laid',
  'no-eggs-in-time': 'No eggs or brood were seen when there must be some',
  'old-queen-seen': 'The old queen was seen where none should be',
  'several-eggs': 'Several eggs stood in cells',
  'drone-brood-only': 'There was drone brood only',
};
