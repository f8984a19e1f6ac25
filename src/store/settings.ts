import * as z from 'zod';

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
  washEveryDays: z.number().int().min(7).max(180).default(30),
  theme: z.enum(['system', 'light', 'dark']).default('system'),
  /** Colony shown last, so that an interrupted keeper comes back to it. */
  lastPlace: z.string().optional(),
});
export type Settings = z.infer<typeof Settings>;
export const DEFAULT_SETTINGS: Settings = Settings.parse({});
