import * as z from 'zod';
import { Background, ColonyId, entryBase, YardId } from '../entry-parts.ts';

export const YardOpened = z
  .object({
    ...entryBase,
    kind: z.literal('yard-opened'),
    yard: YardId,
    name: z.string().min(1).describe('Name of the yard'),
    where: z.string().optional().describe('Where it is'),
    roundOrder: z.number().int().optional().describe('Place in the order of driving'),
  })
  .describe('Yard opened');

/** The drones that fly at a yard in a season: which of the keeper's colonies, and what share is not theirs. */
export const DroneBackground = z
  .object({
    ...entryBase,
    kind: z.literal('drone-background'),
    yard: YardId,
    season: z.number().int().min(1900).max(2200).describe('Season (year)'),
    ownShare: z
      .number()
      .min(0)
      .max(1)
      .describe("Share of the drones that come from the keeper's own colonies"),
    droneColonies: z
      .array(
        z.object({ colony: ColonyId, weight: z.number().positive().describe('Weight beside the others') }),
      )
      .optional()
      .describe('Colonies that flew drones; without a list, every colony of the yard counts the same'),
    background: Background,
    backgroundKinship: z
      .number()
      .min(0)
      .max(1)
      .optional()
      .describe('Kinship of two random gametes of that population, 0 to 1'),
  })
  .describe('Drones at a yard');
