import './schema-mode.ts';
import * as z from 'zod';

/** Ids are UUIDv7 (RFC 9562): unique without a server, and in order of making. Each kind has its own brand. */
export const EntryId = z.uuidv7().brand<'EntryId'>();
export type EntryId = z.infer<typeof EntryId>;
/** Entries written by one confirmation share an action; one undo takes the whole action back. */
export const ActionId = z.uuidv7().brand<'ActionId'>();
export type ActionId = z.infer<typeof ActionId>;
export const KeeperId = z.uuidv7().brand<'KeeperId'>();
export type KeeperId = z.infer<typeof KeeperId>;
export const YardId = z.uuidv7().brand<'YardId'>();
export type YardId = z.infer<typeof YardId>;
export const ColonyId = z.uuidv7().brand<'ColonyId'>();
export type ColonyId = z.infer<typeof ColonyId>;
export const QueenId = z.uuidv7().brand<'QueenId'>();
export type QueenId = z.infer<typeof QueenId>;
export const PhotoId = z.uuidv7().brand<'PhotoId'>();
export type PhotoId = z.infer<typeof PhotoId>;
