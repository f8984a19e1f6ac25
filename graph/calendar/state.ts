/**
 * In one word, what heads the colony on a day, from the windows of the reading held likeliest and what was seen.
 *
 *   cells .. capped-cells .. virgin .. mating .. eggs-due .. (overdue | laying)
 *
 * A stage is sure when the windows leave no other for that day. Cost O(1). Unknown windows are passed over.
 */
import type { Day } from './biology.ts';
import type { ReadingCode } from './readings.ts';
import type { Windows } from './solve.ts';

export type StateCode =
  | 'cells'
  | 'capped-cells'
  | 'virgin'
  | 'mating'
  | 'introduced'
  | 'eggs-due'
  | 'overdue'
  | 'laying'
  | 'old-queen'
  | 'queenless'
  | 'drone-layer'
  | 'laying-workers';

export interface QueenState {
  readonly code: StateCode;
  /** True when what was seen leaves nothing else; false for the likely one of several. */
  readonly sure: boolean;
}

/** What was seen that settles a state. */
export interface Evidence {
  /** First day on which eggs or brood were seen that only a laying queen of the colony's own explains. */
  readonly hersSince?: Day;
  /** Neither open nor capped cells on a day on which they must hang. */
  readonly noCells: boolean;
}

function stage(windows: Windows, on: Day, pick: 'earliest' | 'likely' | 'latest'): StateCode {
  const { capped, emerged, mated, laying } = windows;
  if (capped && on < capped[pick]) return 'cells';
  if (emerged && on < emerged[pick]) return 'capped-cells';
  if (mated && on < mated[pick]) return 'virgin';
  if (laying && on < laying[pick]) return mated ? 'mating' : 'introduced';
  return laying && on > laying.latest ? 'overdue' : 'eggs-due';
}

/** The state on a day under a reading. */
export function stateOn(reading: ReadingCode, windows: Windows, evidence: Evidence, on: Day): QueenState {
  switch (reading) {
    case 'queen-overlooked':
      return { code: 'old-queen', sure: false };
    case 'drone-layer':
      return { code: 'drone-layer', sure: false };
    case 'laying-workers':
      return { code: 'laying-workers', sure: false };
    case 'lost':
    case 'gone-since':
      return { code: 'queenless', sure: false };
    default:
      break;
  }
  if (evidence.hersSince !== undefined && evidence.hersSince <= on) {
    return { code: 'laying', sure: reading === 'as-recorded' };
  }
  if (evidence.noCells) return { code: 'queenless', sure: false };
  const code = stage(windows, on, 'likely');
  const sure = stage(windows, on, 'earliest') === code && stage(windows, on, 'latest') === code;
  return { code, sure };
}
