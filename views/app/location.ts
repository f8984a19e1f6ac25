import { useHashLocation } from 'wouter-preact/use-hash-location';

type Hook = typeof useHashLocation;

/**
 * The hash as the router reads it: the path before the question mark. `#/lines?focus=ID` is the screen `/lines`
 * with the search `focus=ID`; both live in the hash, so a link to them can be kept and opened from a file.
 */
function useHashPath(options?: Parameters<Hook>[0]): ReturnType<Hook> {
  const [whole, navigate] = useHashLocation(options);
  return [whole.split('?')[0] || '/', navigate];
}

function useHashSearch(): string {
  const [whole] = useHashLocation();
  return whole.split('?')[1] ?? '';
}

export const hashHook = Object.assign(useHashPath, {
  hrefs: (href: string) => `#${href}`,
  searchHook: useHashSearch,
});

/** A value out of the search part of the address: `useSearchValue('focus')`. */
export function useSearchValue(name: string): string | undefined {
  return new URLSearchParams(useHashSearch()).get(name) ?? undefined;
}
