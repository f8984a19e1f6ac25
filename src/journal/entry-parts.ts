import * as z from 'zod';
import { RoughDay } from './day.ts';
import { ActionId, ColonyId, EntryId, KeeperId, PhotoId, QueenId, YardId } from './ids.ts';

/** A rule of the registry that the keeper overruled for this entry, and why life did so. */
export const Overruled = z.object({
  rule: z.string().min(1).describe('The contradiction that was overruled'),
  reason: z.string().min(1).describe('Why it is so all the same'),
});

/** What every entry has. */
export const entryBase = {
  id: EntryId,
  action: ActionId,
  day: RoughDay.describe('When it happened'),
  recordedAt: z.iso.datetime().describe('When it was written down (UTC)'),
  recordedBy: KeeperId.describe('Who wrote it down'),
  supersedes: EntryId.optional().describe('The entry that this one corrects'),
  overruled: z.array(Overruled).optional(),
  remark: z.string().optional().describe('Remark'),
};

const share = z.number().min(0).max(1);
export const Probability = share.describe('Probability, 0 to 1');

/** One queen who may be the dam, and how likely. */
export const PossibleDam = z.object({ queen: QueenId, probability: share.describe('How likely, 0 to 1') });
export type PossibleDam = z.infer<typeof PossibleDam>;

/** How a parentage is known. */
export const Evidence = z.enum([
  'eggs-named', // the keeper named whose eggs or larvae they were
  'dam-in-colony', // deduced: she headed the colony when the eggs were laid
  'unmarked-queen-found', // a new queen stood where a marked one was: probably her daughter
  'old-record', // taken over from an older table or from memory
  'told', // another keeper said so
  'marker-test', // a laboratory test
]);
export type Evidence = z.infer<typeof Evidence>;

/** Possible dams; what is missing to a sum of 1 is an unknown queen. Empty: dam unknown. */
export const Parentage = z.object({
  dams: z.array(PossibleDam).describe('Possible dams'),
  evidence: Evidence.describe('How it is known'),
});
export type Parentage = z.infer<typeof Parentage>;

const frames = z.number().min(0).max(60);

/** Frames by what is on them; halves and quarters allowed. */
export const FrameCounts = z.object({
  eggs: frames.optional().describe('Frames with eggs and youngest brood'),
  openBrood: frames.optional().describe('Frames of open brood'),
  emergingBrood: frames.optional().describe('Frames of capped and emerging brood'),
  cells: frames.optional().describe('Frames with queen cells'),
  stores: frames.optional().describe('Frames of stores'),
  drawnComb: frames.optional().describe('Frames of drawn comb'),
  foundation: frames.optional().describe('Frames of foundation'),
  shakenBees: frames.optional().describe('Frames of bees shaken in'),
});
export type FrameCounts = z.infer<typeof FrameCounts>;

/** The ways an entrance may look. */
export const Compass = z.enum(['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW']);
export type Compass = z.infer<typeof Compass>;

/** Where in the yard a colony stands. A divided box is two colonies under one roof. */
export const Place = z.object({
  stand: z.string().optional().describe('Stand'),
  underRoofWith: ColonyId.optional().describe('Under one roof with'),
  entrance: Compass.optional().describe('Entrance looks'),
});
export type Place = z.infer<typeof Place>;

export const Background = z
  .string()
  .min(1)
  .describe('Name of a population without records, such as local bees');

/** Scores of the published protocol: 1 (worst) to 4 (best), half points allowed. */
export const Score = z.number().min(1).max(4).multipleOf(0.5);

export const Winter = z
  .number()
  .int()
  .min(1900)
  .max(2200)
  .describe('The winter, named by the year of its spring: 2026 is the winter 2025/26');

export const Photos = z.array(PhotoId).optional().describe('Photographs');

export { ColonyId, QueenId, YardId };
