import * as z from 'zod';
import { PlainDay } from '../day.ts';
import { ColonyId, entryBase, FrameCounts, Parentage, QueenId } from '../entry-parts.ts';

export const CellAge = z.enum(['open', 'capped', 'emerging', 'unknown']);
export type CellAge = z.infer<typeof CellAge>;

/** What a part of a split has for a queen. An expected queen is a node of the graph from this day on. */
export const PartQueen = z.discriminatedUnion('how', [
  z.object({
    how: z.literal('old-queen'),
    queen: QueenId.optional().describe('The old queen, where she is known'),
  }),
  z.object({ how: z.literal('given-queen'), queen: QueenId }),
  z.object({
    how: z.literal('given-cells'),
    expected: QueenId,
    parentage: Parentage.describe('The queen who laid the eggs of these cells'),
    cellsFrom: ColonyId.optional().describe('The colony that the cells hung in'),
    age: CellAge,
    cells: z.number().int().min(1).optional().describe('Number of cells'),
  }),
  z.object({
    how: z.literal('raises-own'),
    expected: QueenId,
    parentage: Parentage.describe('The queen who laid the eggs left in this part'),
    from: z.enum(['eggs', 'young-brood', 'open-cells', 'capped-cells']).describe('What she is raised from'),
  }),
  z.object({ how: z.literal('none') }),
]);
export type PartQueen = z.infer<typeof PartQueen>;

export const SplitPart = z.object({
  colony: ColonyId.describe('The colony of this part; the source itself where it stays'),
  queen: PartQueen,
  frames: FrameCounts.optional(),
});
export type SplitPart = z.infer<typeof SplitPart>;

/** The colonies of new parts are started by `colony-started` entries of the same action. */
export const Split = z
  .object({
    ...entryBase,
    kind: z.literal('split'),
    source: ColonyId,
    parts: z.array(SplitPart).min(1),
  })
  .describe('Split');

/** Cells carried into a colony. Daughters of the queen who laid the eggs, wherever the frame hung. */
export const CellsGiven = z
  .object({
    ...entryBase,
    kind: z.literal('cells-given'),
    to: ColonyId,
    from: ColonyId.optional().describe('The colony that the cells hung in'),
    expected: QueenId,
    parentage: Parentage,
    age: CellAge,
    cells: z.number().int().min(1).optional().describe('Number of cells'),
    eggsLaid: PlainDay.optional().describe('Day the eggs were laid, where known'),
    graft: z.string().optional().describe('The graft they come from'),
  })
  .describe('Cells given');

/** A frame of eggs or youngest brood given to a queenless colony. */
export const EggsGiven = z
  .object({
    ...entryBase,
    kind: z.literal('eggs-given'),
    to: ColonyId,
    from: ColonyId.optional(),
    expected: QueenId,
    parentage: Parentage,
  })
  .describe('Frame of eggs given');

/** Larvae grafted into a cell builder; the cells are given out by `cells-given`. */
export const Graft = z
  .object({
    ...entryBase,
    kind: z.literal('graft'),
    builder: ColonyId.describe('The colony that builds the cells'),
    name: z.string().min(1).describe('Name of the graft'),
    parentage: Parentage,
    larvae: z.number().int().min(1).describe('Larvae grafted'),
    larvaAgeDays: z.number().min(0).max(4).optional().describe('Age of the larvae (days)'),
    accepted: z.number().int().min(0).optional().describe('Accepted'),
  })
  .describe('Graft');
