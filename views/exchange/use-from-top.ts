import { useEffect } from 'preact/hooks';

/** A page that takes the place of another at the same address starts at its top, for the eye and for a screen reader. */
export function useFromTop(): void {
  useEffect(() => {
    window.scrollTo(0, 0);
    document.getElementById('main')?.focus({ preventScroll: true });
  }, []);
}
