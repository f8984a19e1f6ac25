import * as z from 'zod';
import { ColonyId, entryBase, FrameCounts, Place, YardId } from '../entry-parts.ts';

export const ColonyStarted = z
  .object({
    ...entryBase,
    kind: z.literal('colony-started'),
    colony: ColonyId,
    yard: YardId,
    label: z.string().min(1).describe('Label on the box'),
    how: z
      .enum(['already-here', 'split', 'swarm-taken', 'package', 'nucleus', 'bought'])
      .describe('How it began'),
    from: z.string().optional().describe('Where it came from'),
    box: z.string().optional().describe('Kind of box'),
    place: Place.optional(),
  })
  .describe('Colony started');

export const ColonyMoved = z
  .object({
    ...entryBase,
    kind: z.literal('colony-moved'),
    colony: ColonyId,
    yard: YardId.describe('To yard'),
    place: Place.optional(),
  })
  .describe('Colony moved');

export const ColonyRelabelled = z
  .object({
    ...entryBase,
    kind: z.literal('colony-relabelled'),
    colony: ColonyId,
    label: z.string().min(1).describe('New label on the box'),
  })
  .describe('New label');

export const ColoniesJoined = z
  .object({
    ...entryBase,
    kind: z.literal('colonies-joined'),
    colony: ColonyId.describe('The colony that was given up'),
    into: ColonyId.describe('The colony it went into'),
    queenKept: z.enum(['of-the-receiving', 'of-the-joined', 'unknown']).describe('Whose queen was kept'),
  })
  .describe('Colonies joined');

/** In the order in which a form offers them. */
export const LossCause = z.enum([
  'winter',
  'starved',
  'mites',
  'queenless',
  'robbed',
  'disease',
  'swarmed-out',
  'damp-or-cold',
  'animal-or-weather',
  'sold',
  'given',
  'other',
  'unknown',
]);
export type LossCause = z.infer<typeof LossCause>;

export const ColonyEnded = z
  .object({
    ...entryBase,
    kind: z.literal('colony-ended'),
    colony: ColonyId,
    cause: LossCause.describe('Cause'),
  })
  .describe('Colony ended');

/** Frames carried from one colony to another without making a queen of them. */
export const FramesMoved = z
  .object({
    ...entryBase,
    kind: z.literal('frames-moved'),
    from: ColonyId,
    to: ColonyId,
    frames: FrameCounts,
    aboveExcluder: z.boolean().optional().describe('Hung above an excluder; it emerges into the box below'),
  })
  .describe('Frames moved');
