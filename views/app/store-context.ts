import { computed, type ReadonlySignal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { lastDay } from '../../src/journal/day.ts';
import { project } from '../../src/registry/project.ts';
import type { Registry } from '../../src/registry/state.ts';
import type { Store } from '../../src/store/contract.ts';

export const StoreContext = createContext<Store | undefined>(undefined);

/** The one store of the running app. */
export function useStore(): Store {
  const store = useContext(StoreContext);
  if (!store) throw new Error('useStore was called outside the app: put StoreContext.Provider above it.');
  return store;
}

const asItStood = new WeakMap<Store, ReadonlySignal<Registry>>();

/**
 * The registry as it stood at the end of the day that the screens speak of. On a day with nothing recorded after it
 * that is the registry itself; looking back, the journal is projected up to that day, once for all screens.
 */
export function useRegistry(): Registry {
  const store = useStore();
  let standing = asItStood.get(store);
  if (!standing) {
    standing = computed(() => {
      const until = store.on.value;
      const whole = store.registry.value;
      const later = whole.entries.some((entry) => lastDay(entry.day) > until);
      return later ? project(store.journal.value, { until }) : whole;
    });
    asItStood.set(store, standing);
  }
  return standing.value;
}
