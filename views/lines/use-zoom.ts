import { select } from 'd3-selection';
import { type D3ZoomEvent, type ZoomBehavior, zoom, zoomIdentity, zoomTransform } from 'd3-zoom';
import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { AT_REST, type View } from './view.ts';

export interface ZoomOptions {
  /** Size of the drawing at rest, and of the window it is seen through. */
  readonly width: number;
  readonly height: number;
  readonly windowWidth: number;
  readonly windowHeight: number;
  /**
   * True: the window moves over the drawing both ways. False: the drawing stands whole in the page, only time is
   * stretched, and a finger that moves up or down scrolls the page as anywhere else.
   */
  readonly both: boolean;
}

export interface Zoom {
  readonly view: View;
  readonly zoomBy: (factor: number) => void;
  /** All of it at once. */
  readonly whole: () => void;
  /** Brings a place at rest into the window, moving as little as need be. */
  readonly reveal: (x: number, y: number) => void;
  readonly isWhole: boolean;
}

const DEEPEST = 12;

/** Zooming and panning by d3-zoom: the only file that hands an element to it. */
export function useZoom(element: RefObject<HTMLElement | null>, options: ZoomOptions): Zoom {
  const { width, height, windowWidth, windowHeight, both } = options;
  const [view, setView] = useState<View>(AT_REST);
  const behavior = useRef<ZoomBehavior<HTMLElement, unknown> | undefined>(undefined);
  const home = homeOf(options);
  const least = smallest(options);
  useEffect(() => {
    const node = element.current;
    if (!node || windowWidth <= 0) return;
    const around = zoom<HTMLElement, unknown>()
      .scaleExtent([least, DEEPEST])
      .extent([
        [0, 0],
        [windowWidth, windowHeight],
      ])
      .translateExtent([
        [0, 0],
        [Math.max(width, windowWidth), Math.max(height, windowHeight)],
      ])
      .filter(wanted)
      .on('zoom', ({ transform }: D3ZoomEvent<HTMLElement, unknown>) => {
        setView(both ? roamingView(transform, options) : { kx: transform.k, ky: 1, x: transform.x, y: 0 });
      });
    const quiet = both ? () => {} : leaveScrollingToThePage(node);
    const selection = select(node).call(around);
    selection.call(around.transform, zoomIdentity.translate(home, 0));
    behavior.current = around;
    return () => {
      quiet();
      selection.on('.zoom', null);
    };
  }, [width, height, windowWidth, windowHeight, both]);
  const act = (move: (around: ZoomBehavior<HTMLElement, unknown>, node: HTMLElement) => void) => {
    if (behavior.current && element.current) move(behavior.current, element.current);
  };
  return {
    view,
    zoomBy: (factor) => act((around, node) => select(node).call(around.scaleBy, factor)),
    whole: () => act((around, node) => select(node).call(around.transform, zoomIdentity.scale(least))),
    reveal: (x, y) =>
      act((around, node) => {
        const [dx, dy] = shortestMove(zoomTransform(node), x, y, options);
        if (dx !== 0 || dy !== 0) select(node).call(around.translateBy, dx, dy);
      }),
    isWhole: (both ? view.ky : view.kx) <= least * 1.0001,
  };
}

/** At rest the drawing stands with today in sight. */
function homeOf({ width, windowWidth }: ZoomOptions): number {
  return Math.min(0, windowWidth - width);
}

function smallest({ width, height, windowWidth, windowHeight, both }: ZoomOptions): number {
  const wide = Math.min(1, windowWidth / width);
  return both ? Math.min(wide, windowHeight / height) : wide;
}

interface Transform {
  readonly k: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Both ways alike, except that time is never pressed into less than the window: of a tall registry seen whole only
 * the lanes get thin.
 */
export function roamingView(
  { k, x, y }: Transform,
  { width, windowWidth }: Pick<ZoomOptions, 'width' | 'windowWidth'>,
): View {
  const kx = Math.max(k, Math.min(1, windowWidth / width));
  const middle = (windowWidth / 2 - x) / k;
  const shift = windowWidth / 2 - kx * middle;
  return { kx, ky: k, x: Math.min(0, Math.max(windowWidth - kx * width, shift)), y };
}

/** The wheel scrolls the page as everywhere; with Ctrl, or two fingers on a pad, it zooms. */
function wanted(event: Event): boolean {
  if (event.type === 'wheel') return (event as WheelEvent).ctrlKey || (event as WheelEvent).metaKey;
  return !(event as MouseEvent).button;
}

const MARGIN = 48;

function shortestMove(
  transform: Transform,
  x: number,
  y: number,
  { windowWidth, windowHeight, both }: ZoomOptions,
): readonly [number, number] {
  const move = (place: number, size: number) =>
    place < MARGIN ? MARGIN - place : Math.min(0, size - MARGIN - place);
  return [
    move(transform.x + transform.k * x, windowWidth) / transform.k,
    both ? move(transform.y + transform.k * y, windowHeight) / transform.k : 0,
  ];
}

/** One finger that sets out up or down is kept from d3-zoom, so that the page scrolls under it. */
function leaveScrollingToThePage(node: HTMLElement): () => void {
  let start: Touch | undefined;
  let scrolls: boolean | undefined;
  const began = (event: TouchEvent) => {
    start = event.touches.length === 1 ? event.touches[0] : undefined;
    scrolls = start ? undefined : false;
  };
  const moved = (event: TouchEvent) => {
    const now = event.touches[0];
    if (scrolls === undefined && start && now) {
      scrolls = Math.abs(now.clientY - start.clientY) >= Math.abs(now.clientX - start.clientX);
    }
    if (scrolls) event.stopImmediatePropagation();
  };
  node.addEventListener('touchstart', began, { capture: true, passive: true });
  node.addEventListener('touchmove', moved, { capture: true });
  return () => {
    node.removeEventListener('touchstart', began, { capture: true });
    node.removeEventListener('touchmove', moved, { capture: true });
  };
}
