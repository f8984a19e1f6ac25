import { useRef } from 'preact/hooks';

/** Attribute of the boxes that things can be set down in. */
export const PART_ATTRIBUTE = 'data-part';

const FAR_ENOUGH_PIXELS = 6;

/**
 * Dragging with a mouse or pen, beside tapping: what is pressed and moved is lifted, and set down where it is let go.
 * A finger taps instead, so that a drag of the page never carries a frame away.
 */
export function useDrag(onLift: () => void, onDrop: (part: string) => void) {
  const start = useRef<{ readonly x: number; readonly y: number; moved: boolean } | undefined>(undefined);
  const dropped = useRef(false);
  return {
    onPointerDown: (event: PointerEvent) => {
      dropped.current = false;
      if (event.pointerType === 'touch' || event.button !== 0) return;
      start.current = { x: event.clientX, y: event.clientY, moved: false };
      (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent) => {
      const from = start.current;
      if (!from || from.moved) return;
      if (Math.hypot(event.clientX - from.x, event.clientY - from.y) < FAR_ENOUGH_PIXELS) return;
      from.moved = true;
      onLift();
    },
    onPointerUp: (event: PointerEvent) => {
      const moved = start.current?.moved ?? false;
      start.current = undefined;
      if (!moved) return;
      dropped.current = true;
      const under = document.elementFromPoint(event.clientX, event.clientY)?.closest(`[${PART_ATTRIBUTE}]`);
      const part = under?.getAttribute(PART_ATTRIBUTE);
      if (part) onDrop(part);
    },
    onPointerCancel: () => {
      start.current = undefined;
    },
    /** A click that only ended a drag is no tap. */
    isTap: () => !dropped.current,
  };
}
