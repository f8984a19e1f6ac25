import { BIOLOGY } from '../../../graph/calendar/biology.ts';
import { dayNumber, dayOfNumber, firstDay, lastDay, type RoughDay } from '../../journal/day.ts';
import type { Entry } from '../../journal/entry.ts';
import type { Parentage } from '../../journal/entry-parts.ts';
import type { ColonyId, QueenId } from '../../journal/ids.ts';
import { broodFrom, MOST_CARRIES } from '../brood.ts';
import type { RegistryDraft } from '../draft.ts';
import type { Queen, Tenure } from '../state.ts';

/** Whether the queens named as dams can have laid the eggs. */

/** Days from the egg to the queen, at most. */
export const EGG_TO_QUEEN_DAYS = BIOLOGY.queenEmergence.latest;

/** Days, by number, between which the eggs can have been laid. */
export interface Laid {
  readonly earliest: number;
  readonly latest: number;
}

/** When eggs were laid from which brood of at most this age comes on a day, or brood whose day of laying is known. */
export function laidBefore(day: RoughDay, oldestDays: number, known?: RoughDay): Laid {
  const latest = dayNumber(lastDay(day));
  const earliest = dayNumber(firstDay(day)) - oldestDays;
  return { earliest: known ? Math.max(earliest, dayNumber(firstDay(known))) : earliest, latest };
}

/**
 * Says so when a named dam cannot have laid the eggs: she headed neither the colony they hung in, nor one from which
 * brood was carried there, within the age that they can have. Without a colony she may have headed any.
 */
export function checkEggs(
  draft: RegistryDraft,
  entry: Entry,
  colony: ColonyId | undefined,
  parentage: Parentage,
  laid: Laid,
): void {
  for (const { queen: id, probability } of parentage.dams) {
    const dam = draft.queens.get(id);
    if (probability === 0 || !dam) continue;
    const can =
      colony === undefined ? mayHaveLaid(dam, laid) : laidThere(draft, id, colony, laid, MOST_CARRIES);
    if (can) continue;
    const where = colony === undefined ? '' : ` in ${draft.labelOf(colony)}`;
    const since = dayOfNumber(laid.earliest);
    draft.contradict(entry, 'eggs-of-absent-queen', {
      ...(colony === undefined ? {} : { colony }),
      queen: id,
      found: `${draft.titleOf(id)} as the layer of eggs${where} from ${since} on`,
      because: `By the records she laid nowhere${where === '' ? '' : ` that brood${where} can be from`} since ${since}, so none of it can be hers.`,
      remedies: [
        colony === undefined
          ? 'Name another queen.'
          : `Name the queen who headed ${draft.labelOf(colony)} then.`,
        ...(dam.expectedIn ? [`Enter first that ${draft.titleOf(id)} lays.`] : []),
        ...(colony === undefined ? [] : ['Enter the frame of brood that was carried there.']),
        'Correct the day on which she left.',
      ],
    });
  }
}

/** Whether a queen may have laid by then at all. Nobody knows of one who lives with others, or where. */
function mayHaveLaid(queen: Queen, laid: Laid): boolean {
  const { state, tenures } = queen;
  if (state.is === 'unknown' || state.is === 'expected') return true;
  if (state.is === 'gone' && state.cause === 'given-away') return true;
  if (tenures.length > 0) return tenures.some((tenure) => laysIn(tenure, laid));
  return state.is === 'gone' && dayNumber(lastDay(state.day)) >= laid.earliest;
}

function laysIn({ from, to }: Tenure, { earliest, latest }: Laid): boolean {
  return dayNumber(firstDay(from)) <= latest && (to === undefined || dayNumber(lastDay(to)) >= earliest);
}

function laidThere(
  draft: RegistryDraft,
  queen: QueenId,
  colony: ColonyId,
  laid: Laid,
  steps: number,
): boolean {
  const record = draft.colonies.get(colony);
  if (!record) return false;
  if (record.tenures.some((tenure) => tenure.queen === queen && laysIn(tenure, laid))) return true;
  if (record.entries.some((entry) => graftedThere(entry, queen, colony, laid.earliest))) return true;
  if (steps === 0) return false;
  return record.entries.some((entry) => {
    const carried = dayNumber(lastDay(entry.day));
    if (carried < laid.earliest) return false;
    const from = broodFrom(entry, colony);
    if (from === undefined || from === colony) return false;
    const before = { earliest: laid.earliest, latest: Math.min(laid.latest, carried) };
    return laidThere(draft, queen, from, before, steps - 1);
  });
}

/** A graft names the queen whose larvae went into the builder. */
function graftedThere(entry: Entry, queen: QueenId, builder: ColonyId, earliest: number): boolean {
  if (entry.kind !== 'graft' || entry.builder !== builder) return false;
  if (dayNumber(lastDay(entry.day)) < earliest) return false;
  return entry.parentage.dams.some((dam) => dam.queen === queen && dam.probability > 0);
}
