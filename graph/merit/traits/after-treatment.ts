/**
 * When a mite count says something of the bees and not of a treatment.
 *
 * A count while a treatment acts, or before its effect has worn off, shows what the treatment did. It is no evidence
 * of resistance and is set aside. The wait of 42 days (two cycles of worker brood) is a project assumption: no
 * published number was found. Labels, not this file, say how long a treatment stays in.
 */
import type { MiteCountObservation } from '../observations.ts';
import type { Reason } from './trait.ts';

/** Days after the end of a treatment before a count is believed: two worker brood cycles of 21 days (assumed). */
export const WEARING_OFF_DAYS = 42;

/** Why this count cannot speak for the bees; `undefined` when it can. */
export function spoiltByTreatment({
  treatment,
}: Pick<MiteCountObservation, 'treatment'>): Reason | undefined {
  if (!treatment) return undefined;
  if (treatment.acting) {
    return {
      setAside: 'treatment-acting',
      sentence: `Counted while ${treatment.active} was acting: it shows what the treatment did, not what the bees do.`,
    };
  }
  if (treatment.daysSinceEnd >= WEARING_OFF_DAYS) return undefined;
  return {
    setAside: 'after-treatment',
    sentence:
      `Counted ${treatment.daysSinceEnd} days after ${treatment.active} ended; before ${WEARING_OFF_DAYS} days ` +
      '(our assumption, two brood cycles) a low count shows the treatment, not the bees.',
  };
}
