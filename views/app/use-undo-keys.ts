import { useEffect } from 'preact/hooks';
import type { Store } from '../../src/store/contract.ts';

/** Control or Command with Z takes the last action back, with Shift brings it back; text fields keep their own. */
export function useUndoKeys(store: Store): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z' || isTyping(event.target))
        return;
      event.preventDefault();
      if (event.shiftKey) void store.redo();
      else void store.undo();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [store]);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, textarea, select, [contenteditable]') !== null;
}
