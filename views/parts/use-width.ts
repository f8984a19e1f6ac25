import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** The width of an element in pixels, kept as it changes; 0 before it stands. */
export function useWidth(): { readonly box: RefObject<HTMLDivElement | null>; readonly width: number } {
  const box = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const node = box.current;
    if (!node) return;
    setWidth(Math.floor(node.clientWidth));
    const watch = new ResizeObserver(() => setWidth(Math.floor(node.clientWidth)));
    watch.observe(node);
    return () => watch.disconnect();
  }, []);
  return { box, width };
}
