import type { PlainDay } from '../../src/journal/day.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import type { LifeScale } from './life-scale.ts';

/** What every lane of the band takes: whose life, on which axis, and its place from the top. */
export interface LaneProps {
  readonly colony: Colony;
  readonly registry: Registry;
  readonly on: PlainDay;
  readonly scale: LifeScale;
  readonly top: number;
  readonly height: number;
}
