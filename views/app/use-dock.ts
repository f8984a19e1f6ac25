import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** Keeps the height of what stands at the foot of the screen in `--dock`, so that pages end above it and bars rest on it. */
export function useDock(): RefObject<HTMLDivElement | null> {
  const dock = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const node = dock.current;
    if (!node) return;
    const measure = () =>
      document.documentElement.style.setProperty(
        '--dock',
        `${Math.ceil(node.getBoundingClientRect().height)}px`,
      );
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(node);
    return () => watch.disconnect();
  }, []);
  return dock;
}
