import type { ColonyId } from '../../src/journal/ids.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { SplitBench } from './SplitBench.tsx';

/** A split, recorded as it is done at the hive: the yard from above, the source and its parts around it. */
export function SplitPage({ id }: { readonly id?: string }) {
  const { registry, on } = useStore();
  const source = registry.value.colonies.get(id as ColonyId);
  if (!source || (source.ended && source.ended.day <= (on.value as string))) {
    return (
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        A split starts from a living colony. Choose it in its yard.
      </EmptyState>
    );
  }
  return <SplitBench key={source.id} source={source} />;
}
