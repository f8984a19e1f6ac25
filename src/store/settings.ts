import * as z from 'zod';

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
  yearSpans: YearSpans.default(YearSpans.parse({})),
  /**
   * Equally frequent sex alleles assumed in every population without records. Older estimates were 6 to 19 alleles
   * (Adams et al. 1977, Genetics 86:583, from memory), newer ones far more; 20 is an assumption for the keeper to move.
   */
  sexAlleles: z.number().int().min(2).max(200).default(20),
  washEveryDays: z.number().int().min(7).max(180).default(30),
  theme: z.enum(['system', 'light', 'dark']).default('system'),
  /** Colony shown last, so that an interrupted keeper comes back to it. */
  lastPlace: z.string().optional(),
});
export type Settings = z.infer<typeof Settings>;
export const DEFAULT_SETTINGS: Settings = Settings.parse({});
