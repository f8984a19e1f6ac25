import type { FrameCounts } from '../../../src/journal/entry-parts.ts';

/** What the keeper does alike each time. */

/** What a nucleus gets that is to raise its own queen. */
export const WITH_EGGS: FrameCounts = { eggs: 1, emergingBrood: 1, stores: 1, shakenBees: 1 };
/** What a nucleus gets that is to be given a cell or a queen. */
export const WITHOUT_EGGS: FrameCounts = { emergingBrood: 1, stores: 1, shakenBees: 1 };

export const FORMIC = { active: 'formic acid', manner: 'Evaporated from a pad under the lid' } as const;
export const THYMOL = { active: 'thymol', manner: 'Trays on the top bars' } as const;
/** In December, when there is no brood for mites to hide in. */
export const OXALIC = {
  active: 'oxalic acid',
  manner: 'Trickled into the broodless cluster',
  left: 0.15,
} as const;
