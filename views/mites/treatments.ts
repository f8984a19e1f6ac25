import type { TreatmentState } from '../../graph/merit/observations.ts';
import {
  addDays,
  dayNumber,
  firstDay,
  lastDay,
  type PlainDay,
  type RoughDay,
} from '../../src/journal/day.ts';
import { LONGEST_TREATMENT_DAYS, treatmentOn } from '../../src/registry/observations.ts';
import type { Colony, Registry, TreatmentSpan } from '../../src/registry/state.ts';

/** Treatments as the mite pages read them: which one stands behind a count, which are in, when honey may be taken. */

/** The treatments of a colony, in order of beginning. */
export function treatmentsOf(registry: Registry, colony: Colony): readonly TreatmentSpan[] {
  return [...registry.treatments.values()]
    .filter((span) => span.colonies.includes(colony.id))
    .sort((a, b) => (firstDay(a.from) < firstDay(b.from) ? -1 : 1));
}

/** Treatments of a colony against mites, in order of beginning. */
export function againstMites(registry: Registry, colony: Colony): readonly TreatmentSpan[] {
  return treatmentsOf(registry, colony).filter(({ entry }) => entry.against === undefined);
}

/** The treatment that matters for a count on a day, and how it stood; by the same rule as the breeding values. */
export function behindCount(
  spans: readonly TreatmentSpan[],
  day: RoughDay,
): { readonly span: TreatmentSpan; readonly state: TreatmentState } | undefined {
  const state = treatmentOn(spans, day);
  if (!state) return undefined;
  const span = spans.find((each) => same(treatmentOn([each], day), state));
  return span && { span, state };
}

function same(one: TreatmentState | undefined, other: TreatmentState): boolean {
  if (!one || one.active !== other.active || one.acting !== other.acting) return false;
  return one.acting || other.acting || one.daysSinceEnd === other.daysSinceEnd;
}

/** Still in on a day: begun by then, not yet out; one whose end nobody wrote down counts as in for its longest. */
export function isIn({ from, to }: TreatmentSpan, on: PlainDay): boolean {
  if (firstDay(from) > on) return false;
  return to === undefined ? addDays(lastDay(from), LONGEST_TREATMENT_DAYS) >= on : lastDay(to) > on;
}

/** Begun so long ago without an end that it is taken to be over; the keeper is asked for the end. */
export function endForgotten({ from, to }: TreatmentSpan, on: PlainDay): boolean {
  return to === undefined && addDays(lastDay(from), LONGEST_TREATMENT_DAYS) < on;
}

export type HoneyWait =
  /** The keeper has not written the wait of the label down. */
  | { readonly is: 'not-known' }
  /** The wait begins when the treatment is out. */
  | { readonly is: 'after-end'; readonly days: number }
  | { readonly is: 'until'; readonly day: PlainDay; readonly days: number };

/** When honey may be taken again, by the wait that the keeper took from the label. */
export function honeyWait({ entry, to }: TreatmentSpan): HoneyWait {
  const days = entry.honeyWaitDays;
  if (days === undefined) return { is: 'not-known' };
  return to === undefined
    ? { is: 'after-end', days }
    : { is: 'until', days, day: addDays(lastDay(to), days) };
}

/** All treatments begun by a day, the last first; ties by record. */
export function treatmentLog(registry: Registry, on: PlainDay): readonly TreatmentSpan[] {
  return [...registry.treatments.values()]
    .filter(({ from }) => firstDay(from) <= on)
    .sort((a, b) => dayNumber(firstDay(b.from)) - dayNumber(firstDay(a.from)) || (a.id < b.id ? 1 : -1));
}
