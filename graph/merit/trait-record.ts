/** What observations come to for one trait: a record that counts, or one set aside with its reason. */
import type { MeritRecord } from './solve/pack-records.ts';
import type { SetAsideCode, TraitId } from './traits/trait.ts';

export interface TraitRecord extends MeritRecord {
  readonly trait: TraitId;
  readonly colony: string;
  readonly yard: string;
  readonly season: number;
  /** Last day it rests on. */
  readonly day: number;
  /** Observations it was made of. */
  readonly observations: readonly string[];
  /** True when it rests on fewer evaluations than the protocol asks for: it counts, but weighs less. */
  readonly belowProtocol: boolean;
}

export interface SetAside {
  readonly trait: TraitId;
  readonly code: SetAsideCode;
  readonly sentence: string;
  readonly observations: readonly string[];
  readonly colony: string;
  readonly day: number;
  readonly season: number;
  /** The queen it would have been of, where she is known. */
  readonly queen?: string;
}
