import * as z from 'zod';
import { PlainDay } from '../day.ts';
import { entryBase, Photos, Score, Winter } from '../entry-parts.ts';
import { ColonyId, EntryId } from '../ids.ts';
import { LossCause } from './colony.ts';

const framesOf = (what: string) => z.number().min(0).max(60).optional().describe(`Frames of ${what}`);
const count = (what: string) => z.number().int().min(0).max(200).optional().describe(what);

/** Everything is optional: what was not looked at is not known. `false` means looked for and not there. */
export const Inspection = z
  .object({
    ...entryBase,
    kind: z.literal('inspection'),
    colony: ColonyId,
    occasion: z.enum(['round', 'spring', 'autumn', 'calendar']).optional().describe('Occasion'),
    queenSeen: z
      .enum(['seen-marked', 'seen-unmarked', 'virgin', 'not-seen'])
      .optional()
      .describe('Queen (not seen does not mean not there)'),
    eggs: z.boolean().optional().describe('Eggs'),
    youngBrood: z.boolean().optional().describe('Young open brood'),
    cappedWorkerBrood: z.boolean().optional().describe('Capped worker brood'),
    droneBroodOnly: z.boolean().optional().describe('Drone brood only, scattered'),
    severalEggsInCells: z.boolean().optional().describe('Several eggs in a cell'),
    openCells: count('Open queen cells (at least)'),
    cappedCells: count('Capped queen cells (at least)'),
    emergedCells: count('Emerged queen cells (at least)'),
    tornCells: count('Torn-down queen cells (at least)'),
    gentle: Score.optional().describe('Gentle, 1 to 4'),
    calm: Score.optional().describe('Calm on the comb, 1 to 4'),
    swarmTendency: Score.optional().describe('Swarm tendency, 1 (swarmed) to 4 (no cells)'),
    framesOfBees: framesOf('bees'),
    framesOfBrood: framesOf('brood'),
    framesOfStores: framesOf('stores'),
    broodPattern: z
      .number()
      .min(0)
      .max(100)
      .optional()
      .describe('Brood cells filled in a full patch (percent)'),
    drones: z.enum(['none', 'brood', 'flying']).optional().describe('Drones'),
    note: z.string().optional().describe('Note'),
    photos: Photos,
  })
  .describe('Inspection');
export type Inspection = z.infer<typeof Inspection>;

export const MiteCount = z
  .object({
    ...entryBase,
    kind: z.literal('mite-count'),
    colony: ColonyId,
    sample: z.discriminatedUnion('method', [
      z.object({
        method: z.literal('wash'),
        mites: z.number().int().min(0).describe('Mites'),
        bees: z.number().int().min(1).describe('Bees in the sample'),
        beesCounted: z.boolean().optional().describe('Bees counted or weighed, not judged by volume'),
      }),
      z.object({
        method: z.literal('sugar-shake'),
        mites: z.number().int().min(0).describe('Mites'),
        bees: z.number().int().min(1).describe('Bees in the sample'),
        beesCounted: z.boolean().optional().describe('Bees counted or weighed, not judged by volume'),
      }),
      z.object({
        method: z.literal('natural-drop'),
        mites: z.number().int().min(0).describe('Mites'),
        days: z.number().positive().max(60).describe('Days on the board'),
      }),
    ]),
  })
  .describe('Mite count');

export const ActiveIngredient = z.enum([
  'oxalic acid',
  'formic acid',
  'lactic acid',
  'thymol',
  'amitraz',
  'tau-fluvalinate',
  'flumethrin',
  'hop acids',
  'brood removal',
  'queen caged',
  'other',
]);
export type ActiveIngredient = z.infer<typeof ActiveIngredient>;

export const Treatment = z
  .object({
    ...entryBase,
    kind: z.literal('treatment'),
    colonies: z.array(ColonyId).min(1),
    active: ActiveIngredient.describe('Active ingredient or measure'),
    manner: z.string().optional().describe('How it was given'),
    end: PlainDay.optional().describe('Last day it acted, where known already'),
    honeyWaitDays: z
      .number()
      .int()
      .min(0)
      .max(400)
      .optional()
      .describe('Wait before honey, from the label (days)'),
    against: z.string().optional().describe('Against what, if not mites'),
  })
  .describe('Treatment');

export const TreatmentEnded = z
  .object({ ...entryBase, kind: z.literal('treatment-ended'), treatment: EntryId })
  .describe('Treatment taken out');

export const WinterOutcome = z
  .object({
    ...entryBase,
    kind: z.literal('winter-outcome'),
    colony: ColonyId,
    winter: Winter,
    alive: z.boolean().describe('Alive'),
    cause: LossCause.optional().describe('Cause of the loss'),
    autumnFramesOfBees: framesOf('bees in autumn'),
    springFramesOfBees: framesOf('bees in spring'),
  })
  .describe('Winter outcome');

export const HygienicTest = z
  .object({
    ...entryBase,
    kind: z.literal('hygienic-test'),
    colony: ColonyId,
    method: z.enum(['pin', 'freeze']).describe('Method'),
    cells: z.number().int().min(1).describe('Cells of capped brood tested'),
    notCleared: z.number().int().min(0).describe('Cells not cleared'),
    hours: z.number().positive().max(72).describe('Hours until the reading'),
  })
  .refine((test) => test.notCleared <= test.cells, {
    path: ['notCleared'],
    message: 'at most the number of cells tested',
  })
  .describe('Hygienic test');

export const Harvest = z
  .object({
    ...entryBase,
    kind: z.literal('harvest'),
    colony: ColonyId,
    kilograms: z.number().min(0).max(500).describe('Honey (kg)'),
  })
  .describe('Harvest');

export const Feeding = z
  .object({
    ...entryBase,
    kind: z.literal('feeding'),
    colony: ColonyId,
    feed: z.enum(['syrup', 'fondant', 'sugar', 'honey-frames', 'pollen']).describe('Feed'),
    kilograms: z.number().positive().max(100).optional().describe('Amount (kg)'),
  })
  .describe('Feeding');
