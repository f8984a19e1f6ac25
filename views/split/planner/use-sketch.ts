import { useState } from 'preact/hooks';
import type { PlainDay } from '../../../src/journal/day.ts';
import type { Colony } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { useKept } from '../../parts/use-kept.ts';
import { firstSketch, frameSizes, type Sketch, type SketchBasis, sketchBasis } from './sketch.ts';

/** The sketch of a colony, kept on the device while the keeper is at it, and where it came from. */
export function useSketch(
  colony: Colony,
  on: PlainDay,
): {
  readonly sketch: Sketch;
  readonly set: (sketch: Sketch) => void;
  readonly forget: () => void;
  readonly leftAt?: Date;
  readonly basis: SketchBasis;
} {
  const store = useStore();
  const [first] = useState(() => {
    const basis = sketchBasis(colony, on);
    const size = frameSizes(store.settings.peek().frameSizes)[0]?.name ?? '';
    return { basis, sketch: firstSketch(basis, size, store.newId) };
  });
  const kept = useKept<Sketch>(`split plan ${colony.id}`, first.sketch);
  return {
    sketch: kept.value,
    set: kept.set,
    forget: kept.forget,
    basis: first.basis,
    ...(kept.leftAt ? { leftAt: kept.leftAt } : {}),
  };
}
