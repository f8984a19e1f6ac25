import * as z from 'zod';
import { RoughDay } from '../day.ts';
import { Background, ColonyId, entryBase, Parentage, QueenId, YardId } from '../entry-parts.ts';

export const MarkColour = z.enum(['white', 'yellow', 'red', 'green', 'blue', 'other']);
export type MarkColour = z.infer<typeof MarkColour>;

/** A queen got from elsewhere, found in a colony when records begin, or taken over from older records. */
export const QueenEntered = z
  .object({
    ...entryBase,
    kind: z.literal('queen-entered'),
    queen: QueenId,
    name: z.string().min(1).optional().describe('Name'),
    colony: ColonyId.optional().describe('The colony that she heads'),
    born: RoughDay.optional().describe('When she emerged'),
    parentage: Parentage.optional().describe('Her dam, where known'),
    background: Background.optional().describe('The population she comes from, where her dam is not known'),
    from: z.string().optional().describe('From whom'),
    laying: z.boolean().optional().describe('Laying when entered'),
    colour: MarkColour.optional().describe('Mark'),
    mark: z.string().optional().describe('Number on the mark'),
  })
  .describe('Queen entered');

/** A queen not made on purpose is on her way: swarm, supersedure or emergency cells in a colony left whole. */
export const QueenExpected = z
  .object({
    ...entryBase,
    kind: z.literal('queen-expected'),
    queen: QueenId,
    colony: ColonyId,
    reason: z.enum(['swarm', 'supersedure', 'emergency']).describe('Kind of cells'),
    parentage: Parentage.optional(),
  })
  .describe('Cells found');

/** Another queen stands where one was known: an unmarked queen where a marked one was, and the like. */
export const QueenFound = z
  .object({
    ...entryBase,
    kind: z.literal('queen-found'),
    queen: QueenId.describe('The queen found'),
    colony: ColonyId,
    insteadOf: QueenId.optional().describe('The queen who was known there'),
    name: z.string().min(1).optional().describe('Name'),
    parentage: Parentage.optional(),
    born: RoughDay.optional().describe('When she may have emerged'),
  })
  .describe('Another queen found');

export const QueenConfirmed = z
  .object({
    ...entryBase,
    kind: z.literal('queen-confirmed'),
    queen: QueenId,
    colony: ColonyId,
    seen: z.enum(['eggs', 'worker-brood', 'queen-laying']).describe('What was seen'),
  })
  .describe('Queen laying');

export const QueenMarked = z
  .object({
    ...entryBase,
    kind: z.literal('queen-marked'),
    queen: QueenId,
    colour: MarkColour,
    mark: z.string().optional().describe('Number on the mark'),
    clipped: z.boolean().optional().describe('Wing clipped'),
  })
  .describe('Queen marked');

export const QueenNamed = z
  .object({
    ...entryBase,
    kind: z.literal('queen-named'),
    queen: QueenId,
    name: z.string().min(1).describe('Name'),
  })
  .describe('Queen named');

export const QueenLossCause = z.enum([
  'superseded',
  'swarmed',
  'failed-to-emerge',
  'failed-to-mate',
  'drone-layer',
  'killed',
  'given-away',
  'died-with-colony',
  'not-found',
  'unknown',
]);
export type QueenLossCause = z.infer<typeof QueenLossCause>;

export const QueenLost = z
  .object({
    ...entryBase,
    kind: z.literal('queen-lost'),
    queen: QueenId,
    cause: QueenLossCause.describe('What became of her'),
    to: z.string().optional().describe('Given to'),
  })
  .describe('Queen lost or given away');

/** A queen, virgin or mated, put into a colony. */
export const QueenMoved = z
  .object({
    ...entryBase,
    kind: z.literal('queen-moved'),
    queen: QueenId,
    to: ColonyId,
    how: z.enum(['caged', 'direct', 'with-her-frame']).optional().describe('How she was introduced'),
  })
  .describe('Queen put into a colony');

export const ParentageStated = z
  .object({ ...entryBase, kind: z.literal('parentage-stated'), queen: QueenId, parentage: Parentage })
  .describe('Parentage stated');

const DroneMother = z.object({
  queen: QueenId,
  share: z.number().min(0).max(1).describe('Share of the drones'),
});

export const Mating = z
  .object({
    ...entryBase,
    kind: z.literal('mating'),
    queen: QueenId,
    way: z.discriminatedUnion('manner', [
      z.object({ manner: z.literal('open'), yard: YardId.describe('Where she flew') }),
      z.object({
        manner: z.literal('insemination'),
        droneMothers: z.array(DroneMother).min(1).describe('Mothers of the drones'),
        singleDrone: z.boolean().optional().describe('Semen of one drone'),
      }),
      z.object({
        manner: z.literal('station'),
        station: z.string().min(1).describe('Name of the isolated station'),
        droneMothers: z.array(DroneMother).describe('Mothers of the drones there'),
        background: Background.optional(),
      }),
    ]),
    effectiveMates: z.number().min(1).max(60).optional().describe('Effective number of mates, where known'),
  })
  .describe('Mating');
