import { useEffect, useMemo } from 'preact/hooks';
import { broodInbreedingOf, inbreedingOf } from '../../graph/kinship/inbreeding.ts';
import type { Queen } from '../../src/registry/state.ts';
import { wintersCrossed } from '../../src/registry/winters-of-queen.ts';
import { traitWeights } from '../../src/store/trait-weights.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import { pedigreeOf } from '../lines/pedigree-of.ts';
import { daughterCounts, daughtersOf } from './daughter-counts.ts';
import { herTraits } from './her-traits.ts';
import type { MeritSectionProps } from './MeritSection.tsx';
import { meritFigures } from './merit-figures.ts';
import { reasons } from './worth.ts';

/** What the section on her worth is told: the facts now, the evaluation when it is there. */
export function useWorth(queen: Queen): MeritSectionProps {
  const store = useStore();
  useEffect(() => store.watchEvaluation(), [store]);
  const state = store.evaluation.value;
  const evaluated = state.is === 'ready' ? state.evaluated : 'before' in state ? state.before : undefined;
  const settings = store.settings.value;
  const merit = useMemo(
    () => evaluated && meritFigures(evaluated, queen.id, traitWeights(settings)),
    [evaluated, queen.id, settings],
  );
  const facts = useFacts(queen);
  return { ...facts, merit, underWay: state.is === 'running' };
}

function useFacts(queen: Queen): MeritSectionProps {
  const registry = useRegistry();
  const on = useStore().on.value;
  return useMemo(() => {
    const { byId, lines } = lineFacts(registry, on);
    const pedigree = pedigreeOf(registry);
    const index = pedigree?.queenIndex.get(queen.id);
    const known = pedigree && index !== undefined ? { pedigree, index } : undefined;
    const broodInbreeding = known && broodInbreedingOf(known.pedigree, known.index);
    return {
      inbreeding: known && inbreedingOf(known.pedigree, known.index),
      broodInbreeding,
      ...reasons({
        queen,
        winters: wintersCrossed(queen, on),
        line: lines.find(({ line }) => line === byId.get(queen.id)?.line),
        traits: herTraits(registry, queen.id),
        daughters: daughterCounts(registry, daughtersOf(byId, queen.id), on),
        broodInbreeding,
      }),
    };
  }, [registry, on, queen]);
}
