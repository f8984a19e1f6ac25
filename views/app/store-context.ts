import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Store } from '../../src/store/contract.ts';

export const StoreContext = createContext<Store | undefined>(undefined);

/** The one store of the running app. */
export function useStore(): Store {
  const store = useContext(StoreContext);
  if (!store) throw new Error('useStore was called outside the app: put StoreContext.Provider above it.');
  return store;
}
