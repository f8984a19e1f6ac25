import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Names the window after the heading of the page, for the history of the browser and for screen readers. */
export function usePageTitle(): RefObject<HTMLHeadingElement | null> {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    const words = heading.current?.textContent?.trim();
    document.title = words ? `${words} - Damline` : 'Damline';
  });
  return heading;
}
