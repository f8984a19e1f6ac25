import { spoiltByTreatment } from '../../graph/merit/traits/after-treatment.ts';
import { daysBetween, firstDay, lastDay, type RoughDay } from '../../src/journal/day.ts';
import type { Colony, Registry, TreatmentSpan } from '../../src/registry/state.ts';

/** Why a count on this day speaks of a treatment and not of the bees; nothing when none is near. */
export function treatmentWords(day: RoughDay, registry: Registry, colony: Colony): string | undefined {
  const counted = firstDay(day);
  const last = treatmentsOf(registry, colony).findLast((span) => firstDay(span.from) <= counted);
  if (!last) return undefined;
  const { active } = last.entry;
  const acting = last.to === undefined || lastDay(last.to) >= counted;
  const treatment = acting
    ? { acting, active }
    : { acting, active, daysSinceEnd: daysBetween(lastDay(last.to ?? last.from), counted) };
  return spoiltByTreatment({ ...NO_COUNT, treatment })?.sentence;
}

/** The rule looks at the treatment alone. */
const NO_COUNT = {
  kind: 'mite-count',
  id: '',
  day: 0,
  dayExact: true,
  colony: '',
  season: 0,
  workers: { known: false, because: 'nobody-known' },
  sample: { method: 'wash', mites: 0, bees: 1 },
} as const;

/** The treatments of a colony, in order of beginning. */
export function treatmentsOf(registry: Registry, colony: Colony): readonly TreatmentSpan[] {
  return [...registry.treatments.values()]
    .filter((span) => span.colonies.includes(colony.id))
    .sort((a, b) => (firstDay(a.from) < firstDay(b.from) ? -1 : 1));
}
