import { useState } from 'preact/hooks';
import type { ColonyId } from '../../src/journal/ids.ts';
import { isLiving, tenureOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { useSearchValue } from '../app/location.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { EndedWords } from '../parts/EndedWords.tsx';
import type { SplitPlan } from './plan.ts';
import { Planner } from './planner/index.tsx';
import { SplitBench } from './SplitBench.tsx';
import { SplitFirst } from './SplitFirst.tsx';

/** A split: choosing the colony, planning it beforehand, and recording it as it is done at the hive. */
export function SplitPage({ id }: { readonly id?: string }) {
  const { registry, on } = useStore();
  if (!id) return <SplitFirst />;
  const source = registry.value.colonies.get(id as ColonyId);
  if (!source || !isLiving(source, on.value)) {
    return (
      <EmptyState action={{ label: 'Choose a colony', href: routes.splitFirst() }}>
        {source && <EndedWords colony={source} />} A split starts from a living colony.
      </EmptyState>
    );
  }
  return <SplitOf key={source.id} source={source} />;
}

/** The planner and the bench of one colony; what is planned stays when the bench is opened. */
function SplitOf({ source }: { readonly source: Colony }) {
  const on = useStore().on.value;
  const planning = useSearchValue('plan') !== undefined && tenureOn(source, on) !== undefined;
  const [planned, setPlanned] = useState<SplitPlan>();
  if (planning) return <Planner source={source} onBench={setPlanned} />;
  return <SplitBench source={source} planned={planned} />;
}
