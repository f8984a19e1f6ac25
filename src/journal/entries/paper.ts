import * as z from 'zod';
import { entryBase, Photos } from '../entry-parts.ts';
import { ColonyId, EntryId, KeeperId, QueenId, YardId } from '../ids.ts';

/** Entries about the records themselves, and free notes. */

export const KeeperNamed = z
  .object({
    ...entryBase,
    kind: z.literal('keeper-named'),
    keeper: KeeperId,
    name: z.string().min(1).describe('Name'),
  })
  .describe('Keeper named');

export const Note = z
  .object({
    ...entryBase,
    kind: z.literal('note'),
    about: z
      .discriminatedUnion('of', [
        z.object({ of: z.literal('colony'), colony: ColonyId }),
        z.object({ of: z.literal('queen'), queen: QueenId }),
        z.object({ of: z.literal('yard'), yard: YardId }),
      ])
      .optional(),
    text: z.string().min(1).describe('Note'),
    photos: Photos,
  })
  .describe('Note');

/** Hides entries without deleting them: an undo, or a mistake taken back. Withdrawing a withdrawal restores. */
export const Withdrawal = z
  .object({
    ...entryBase,
    kind: z.literal('withdrawal'),
    withdraws: z.array(EntryId).min(1),
    reason: z.string().optional().describe('Why'),
  })
  .describe('Taken back');

/** A question of the rounds answered without an inspection, or set aside. */
export const TaskSettled = z
  .object({
    ...entryBase,
    kind: z.literal('task-settled'),
    colony: ColonyId,
    task: z.string().min(1).describe('The task'),
    how: z.enum(['done', 'set-aside']).describe('Done or set aside'),
  })
  .describe('Task settled');
