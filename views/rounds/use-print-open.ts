import { useEffect, useRef } from 'preact/hooks';

/** On paper nothing can be opened: everything that is folded is open while the page is printed, and folded after. */
export function usePrintOpen<Element extends HTMLElement>() {
  const page = useRef<Element>(null);
  useEffect(() => {
    let opened: readonly HTMLDetailsElement[] = [];
    const open = () => {
      opened = [...(page.current?.querySelectorAll<HTMLDetailsElement>('details:not([open])') ?? [])];
      for (const each of opened) each.open = true;
    };
    const fold = () => {
      for (const each of opened) each.open = false;
      opened = [];
    };
    window.addEventListener('beforeprint', open);
    window.addEventListener('afterprint', fold);
    return () => {
      window.removeEventListener('beforeprint', open);
      window.removeEventListener('afterprint', fold);
    };
  }, []);
  return page;
}
