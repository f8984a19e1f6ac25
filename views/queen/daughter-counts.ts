import { type Interval, wilson } from '../../graph/merit/counts/intervals.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Registry } from '../../src/registry/state.ts';
import { wintersEntered } from '../../src/registry/winters-of-queen.ts';
import type { Life } from '../lines/lives.ts';

/** What a queen's daughters did, counted. A daughter counts whole though her dam be only probable; that is told too. */
export interface DaughterCounts {
  readonly raised: number;
  readonly probable: number;
  readonly awaited: number;
  readonly cameToLay: number;
  readonly failed: number;
  readonly living: number;
  /** Share of those decided that came to lay, with Wilson's 95 % interval, which is drawn; absent when none is decided. */
  readonly layingShare?: Interval & { readonly value: number };
  /** A daughter counts once for each winter she went into heading a colony, if it is told whether she came out. */
  readonly wintersWentIn: number;
  readonly wintersCameOut: number;
}

/** What became of her daughters, and how many winters they went into and came out of. */
export function daughterCounts(registry: Registry, daughters: readonly Life[], on: PlainDay): DaughterCounts {
  const awaited = daughters.filter(({ fate }) => fate === 'expected').length;
  const failed = daughters.filter(({ fate }) => fate === 'failed').length;
  const cameToLay = daughters.filter(({ laying }) => laying !== undefined).length;
  const decided = cameToLay + failed;
  let wintersWentIn = 0;
  let wintersCameOut = 0;
  for (const { id, winters } of daughters) {
    const queen = registry.queens.get(id);
    const begun = queen ? wintersEntered(queen, on) : [];
    wintersWentIn += begun.length;
    wintersCameOut += begun.filter((spring) => winters.includes(spring)).length;
  }
  return {
    raised: daughters.length,
    probable: daughters.filter(({ certainty }) => certainty !== 'firm').length,
    awaited,
    cameToLay,
    failed,
    living: daughters.filter(({ fate }) => fate === 'living').length,
    ...(decided > 0 ? { layingShare: { ...wilson(cameToLay, decided), value: cameToLay / decided } } : {}),
    wintersWentIn,
    wintersCameOut,
  };
}

/** Her daughters, eldest first: all queens she is the most probable dam of. */
export function daughtersOf(byId: ReadonlyMap<QueenId, Life>, queen: QueenId): readonly Life[] {
  return [...byId.values()]
    .filter(({ dam }) => dam === queen)
    .sort((a, b) => a.start - b.start || (a.id < b.id ? -1 : 1));
}

/** The counts in a sentence: "9 raised: 6 came to lay, 2 came to nothing, 1 awaited." */
export function countsSentence({ raised, cameToLay, failed, awaited }: DaughterCounts): string {
  const parts = [
    cameToLay > 0 ? `${cameToLay} came to lay` : '',
    failed > 0 ? `${failed} came to nothing` : '',
    awaited > 0 ? `${awaited} awaited` : '',
  ].filter((part) => part !== '');
  return `${raised} on record${parts.length > 0 ? `: ${parts.join(', ')}` : ''}.`;
}
