import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { useWidth } from '../parts/use-width.ts';
import { Axis } from './Axis.tsx';
import { CanvasLines } from './CanvasLines.tsx';
import styles from './drawing.module.css';
import { placeLives } from './geometry.ts';
import type { Life } from './lives.ts';
import type { Look } from './look.ts';
import { SvgLines } from './SvgLines.tsx';
import { isLarge, metricsFor, plotFor, windowHeight } from './sizes.ts';
import { drawnYears, timeScale } from './time-scale.ts';
import { useZoom } from './use-zoom.ts';
import { nearest, stepOfKey, walk } from './walk.ts';
import { ZoomButtons } from './ZoomButtons.tsx';

export interface DrawingProps {
  readonly lives: readonly Life[];
  /** The lines to draw, from top to bottom. */
  readonly lines: readonly QueenId[];
  readonly on: PlainDay;
  readonly look: Look;
  readonly winters: ReadonlyMap<number, { readonly wentIn: number; readonly cameOut: number }>;
  readonly onChoose: (queen: QueenId | undefined) => void;
  readonly onOpen: (queen: QueenId) => void;
}

/** Room beside the axis, in pixels, from which a third button stands there; else the second minus shows all. */
const WORDS_ROOM = 160;

/** The lines through time, with the names of those alive today beside them. */
export function Drawing({ lives, lines, on, look, winters, onChoose, onOpen }: DrawingProps) {
  const { box, width } = useWidth();
  const stage = useRef<HTMLDivElement>(null);
  const large = isLarge(lives.length);
  const metrics = metricsFor(width, lives.length);
  const first = lives.reduce((day, { start }) => Math.min(day, start), Number.POSITIVE_INFINITY);
  const { plot, gutter, yearWidth } = plotFor(width, drawnYears(first, on));
  const scale = useMemo(() => timeScale(first, on, yearWidth), [first, on, yearWidth]);
  const geometry = useMemo(
    () => placeLives(lives, lines, scale, metrics),
    [lives, lines, scale, metrics.lane],
  );
  const height = windowHeight(geometry.height, large);
  const zoom = useZoom(stage, {
    width: scale.width,
    height: geometry.height,
    windowWidth: plot,
    windowHeight: height,
    both: large,
  });
  const reveal = (id: QueenId) => {
    const queen = geometry.byId.get(id);
    if (!queen || !stage.current) return;
    zoom.reveal(queen.from, queen.y);
    if (!large) scrollIntoSight(stage.current, queen.y);
  };
  const shown = look.chosen.at(-1);
  const tapped = useRef<QueenId | undefined>(undefined);
  const ready = width > 0;
  // Whoever is chosen by name, by key or by the address is brought into sight; who was tapped is in sight.
  useEffect(() => {
    const sought = ready && shown !== tapped.current ? shown : undefined;
    tapped.current = undefined;
    // A page that was just opened begins at its top; she is sought after that.
    const later = sought && requestAnimationFrame(() => reveal(sought));
    return () => cancelAnimationFrame(later || 0);
  }, [shown, ready]);
  const onKey = (event: KeyboardEvent) => {
    const at = look.chosen[0];
    if (event.key === 'Enter' && at) onOpen(at);
    else if (event.key === 'Escape') onChoose(undefined);
    else if (event.key === '+' || event.key === '-') zoom.zoomBy(event.key === '+' ? 1.5 : 1 / 1.5);
    else {
      const step = stepOfKey(event.key);
      if (!step || event.altKey || event.ctrlKey || event.metaKey) return;
      const next = walk(geometry, at, step);
      if (next) onChoose(next);
    }
    event.preventDefault();
  };
  const onTap = (event: MouseEvent) => {
    const frame = stage.current?.getBoundingClientRect();
    if (!frame) return;
    const at = { x: event.clientX - frame.left, y: event.clientY - frame.top };
    const queen = nearest(geometry, zoom.view, at, plot);
    tapped.current = queen;
    onChoose(queen);
  };
  const Renderer = large ? CanvasLines : SvgLines;
  const render = { geometry, scale, view: zoom.view, plot, gutter, height, look };
  return (
    <div ref={box} class={large ? styles.roaming : undefined}>
      <div class={styles.top}>
        <Axis scale={scale} view={zoom.view} plot={plot} winters={winters} />
        <ZoomButtons zoom={zoom} whole={gutter < WORDS_ROOM ? undefined : large ? 'Whole' : 'All years'} />
      </div>
      <div
        ref={stage}
        class={styles.stage}
        role="application"
        aria-roledescription="pedigree"
        aria-label="The lines through time. Left to her dam, right to a daughter, up and down to sisters, Enter opens her page. The same as a list follows."
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the drawing is walked with the arrow keys.
        tabIndex={0}
        onKeyDown={onKey}
        onClick={onTap}
      >
        {width > 0 && <Renderer {...render} />}
      </div>
    </div>
  );
}

/** Pixels that stay free above and below a queen brought into sight. */
const AROUND = 120;

/** Scrolls the page just as far as is needed to see a place of the drawing; on a phone a panel covers its lower half. */
function scrollIntoSight(stage: HTMLElement, y: number): void {
  const top = stage.getBoundingClientRect().top + y;
  const desk = window.matchMedia('(min-width: 60rem)').matches;
  const lowest = desk ? window.innerHeight - AROUND : window.innerHeight / 2 - AROUND / 3;
  if (top < AROUND) window.scrollBy(0, top - AROUND);
  else if (top > lowest) window.scrollBy(0, top - lowest);
}
