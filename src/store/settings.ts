import '../journal/schema-mode.ts';
import * as z from 'zod';
import { CalendarRecord } from '../exchange/calendar-record.ts';

const MonthDay = z.string().regex(/^\d{2}-\d{2}$/);
const Span = z.object({ from: MonthDay, to: MonthDay });

/**
 * Spans of the year in which the rounds ask for something, as month and day. They depend on the place; those offered
 * are common practice in cold-winter country (no source), for the keeper to move.
 */
export const YearSpans = z.object({
  swarmSeason: Span.default({ from: '05-01', to: '07-10' }),
  miteSeason: Span.default({ from: '05-15', to: '09-30' }),
  autumnPreparation: Span.default({ from: '08-20', to: '10-15' }),
  winterOutcome: Span.default({ from: '03-10', to: '04-30' }),
  springStrength: Span.default({ from: '04-10', to: '05-20' }),
});
export type YearSpans = z.infer<typeof YearSpans>;

/** A frame size as the keeper measured or counted it; the split planner reckons bees and brood by it. */
export const FrameSizeSetting = z.object({
  id: z.string(),
  name: z.string().min(1),
  /** Area of one comb side, in dm2. */
  sideDm2: z.number().positive().max(40),
  /** Bees on a frame covered on both sides, where the keeper has counted or weighed. */
  fullBees: z.number().int().positive().max(20_000).optional(),
});
export type FrameSizeSetting = z.infer<typeof FrameSizeSetting>;

/** Variances of a trait that the keeper took from their own records instead of the published ones; its squared unit. */
export const OwnVariances = z.object({
  worker: z.number().nonnegative(),
  queen: z.number().nonnegative(),
  covariance: z.number(),
  permanent: z.number().nonnegative(),
  residual: z.number().positive(),
  /** Day of the estimate. */
  on: z.string(),
});
export type OwnVariances = z.infer<typeof OwnVariances>;

/** How the keeper shares out the daughters of a season. */
export const Choosing = z.object({
  daughters: z.number().int().min(1).max(999).default(12),
  /** Most daughters from one queen. */
  mostEach: z.number().int().min(1).max(999).default(4),
  /** Highest mean kinship (0..1) of the daughters with the drones they meet; absent: no limit. */
  droneKinshipLimit: z.number().min(0).max(1).optional(),
  /** Highest mean kinship (0..1) of the dams of two daughters; absent: no limit. */
  kinshipLimit: z.number().min(0).max(1).optional(),
  /** Where on the curve: 0 most gain, 1 least kinship. */
  thrift: z.number().min(0).max(1).default(0.5),
  /** Yard that all daughters fly at; absent: each where she is least related to the drones. */
  flownAt: z.string().optional(),
  /** Queens that the keeper took into the choice or out of it, by id. */
  takenIn: z.record(z.string(), z.boolean()).default({}),
});
export type Choosing = z.infer<typeof Choosing>;

/** Choices of the keeper on this device. They are not facts, so they are not in the journal. */
export const Settings = z.object({
  /** Weight of each trait in the index, by trait name; absent: the trait's own suggestion. */
  traitWeights: z.record(z.string(), z.number()).default({}),
  /** Action thresholds for mites that the keeper goes by. */
  miteThresholds: z
    .array(
      z.object({
        id: z.string(),
        months: z.array(z.number().int().min(1).max(12)).min(1),
        method: z.enum(['wash', 'sugar-shake', 'natural-drop']),
        /** Percent of bees for washes and shakes, mites a day for the drop. */
        value: z.number().positive(),
        jurisdiction: z.string(),
        source: z.string(),
      }),
    )
    .default([]),
  /** Frame sizes of the keeper's own, offered before those of common boxes. */
  frameSizes: z.array(FrameSizeSetting).default([]),
  yearSpans: YearSpans.default(YearSpans.parse({})),
  /**
   * Equally frequent sex alleles assumed in every population without records. Older estimates were 6 to 19 alleles
   * (Adams et al. 1977, Genetics 86:583, from memory), newer ones far more; 20 is an assumption for the keeper to move.
   */
  sexAlleles: z.number().int().min(2).max(200).default(20),
  /** Effective mates of a daughter to come; absent: the number that the pedigree assumes. */
  effectiveMates: z.number().int().min(1).max(40).optional(),
  /** Variances from the keeper's own records, by trait, where the keeper said to use them. */
  ownVariances: z.record(z.string(), OwnVariances).default({}),
  choosing: Choosing.default(Choosing.parse({})),
  washEveryDays: z.number().int().min(7).max(180).default(30),
  /** What the calendar files of the rounds have put into the keeper's calendar. */
  calendar: CalendarRecord.default(CalendarRecord.parse({})),
  theme: z.enum(['system', 'light', 'dark']).default('system'),
  /** Colony shown last, so that an interrupted keeper comes back to it. */
  lastPlace: z.string().optional(),
});
export type Settings = z.infer<typeof Settings>;
export const DEFAULT_SETTINGS: Settings = Settings.parse({});
