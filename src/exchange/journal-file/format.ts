import * as z from 'zod';
import type { Entry } from '../../journal/entry.ts';
import { KeeperId, PhotoId, QueenId } from '../../journal/ids.ts';

/**
 * The journal file: one JSON object, in UTF-8, its name ending in `.damline.json`. It is the backup and the means of
 * exchange, meant to be read without this app too.
 *
 *   format    "damline-journal", always
 *   version   version of the entry shapes, rising with each change (see src/journal/migrations)
 *   exported  when it was written, UTC
 *   by        who wrote it: id and name
 *   scope     { "of": "all" }, or { "of": "queen", "queen": id, "name": ... } for the pedigree of one queen
 *   entries   the entries, each on a line of its own, sorted by id, keys sorted: equal journals give equal bytes
 *   photos    where wanted: id, media type and the bytes in base64, each on a line of its own
 */
export const JOURNAL_FORMAT = 'damline-journal';
export const JOURNAL_FILE_END = '.damline.json';

export const JournalFileScope = z.discriminatedUnion('of', [
  z.object({ of: z.literal('all') }),
  z.object({ of: z.literal('queen'), queen: QueenId, name: z.string() }),
]);
export type JournalFileScope = z.infer<typeof JournalFileScope>;

export const JournalFileBy = z.object({ id: KeeperId, name: z.string() });
export type JournalFileBy = z.infer<typeof JournalFileBy>;

/** All but the entries, which are read one by one. */
export const JournalFileHead = z.object({
  exported: z.iso.datetime(),
  by: JournalFileBy,
  scope: JournalFileScope,
});

export const FilePhoto = z.object({
  id: PhotoId,
  type: z.string(),
  base64: z.string(),
});

/** A photograph as the store keeps it. */
export interface Photo {
  readonly id: PhotoId;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

export interface JournalFile {
  readonly exported: string;
  readonly by: JournalFileBy;
  readonly scope: JournalFileScope;
  readonly entries: readonly Entry[];
  readonly photos: readonly Photo[];
}
