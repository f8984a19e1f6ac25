import { createContext } from 'preact';
import { useContext } from 'preact/hooks';

/** Below a provider of `true`, queens and boxes are named without links: they have no pages, or not yet. */
export const PlainNames = createContext(false);

export function usePlainNames(): boolean {
  return useContext(PlainNames);
}
