import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Pixels that fit on a sheet of A4 or letter paper between common margins. */
const PAPER = 680;

/** The width of an element in pixels, kept as it changes; 0 before it stands. On paper no wider than a sheet. */
export function useWidth(): { readonly box: RefObject<HTMLDivElement | null>; readonly width: number } {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const node = box.current;
    if (!node) return;
    setWidth(Math.floor(node.clientWidth));
    const watch = new ResizeObserver(() => setWidth(Math.floor(node.clientWidth)));
    watch.observe(node);
    // Printing lays the page out anew and tells no observer.
    const toPaper = () => setWidth((now) => Math.min(now, PAPER));
    const toScreen = () => setWidth(Math.floor(node.clientWidth));
    window.addEventListener('beforeprint', toPaper);
    window.addEventListener('afterprint', toScreen);
    return () => {
      watch.disconnect();
      window.removeEventListener('beforeprint', toPaper);
      window.removeEventListener('afterprint', toScreen);
    };
  }, []);
  return { box, width };
}
