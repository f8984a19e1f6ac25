import { useMemo } from 'preact/hooks';
import type { PlainDay } from '../../src/journal/day.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { go, routes } from '../app/routes.ts';
import { useWidth } from '../parts/use-width.ts';
import { Axis } from './Axis.tsx';
import { placeLives } from './geometry.ts';
import type { Life } from './lives.ts';
import type { Look } from './look.ts';
import { SvgLines } from './SvgLines.tsx';
import { metricsFor, plotFor } from './sizes.ts';
import { drawnYears, timeScale } from './time-scale.ts';
import { AT_REST } from './view.ts';
import { nearest } from './walk.ts';

export interface StillDrawingProps {
  readonly lives: readonly Life[];
  readonly on: PlainDay;
  readonly look: Look;
  /** The same in words, for those who do not see it. */
  readonly words: string;
}

const NO_COUNTS = new Map<number, never>();

/** A few lives of one line as they stand, without zooming; a press on one opens her page. */
export function StillDrawing({ lives, on, look, words }: StillDrawingProps) {
  const { box, width } = useWidth();
  const first = lives.reduce((day, { start }) => Math.min(day, start), Number.POSITIVE_INFINITY);
  const { plot, gutter, yearWidth } = plotFor(width, drawnYears(first, on));
  const scale = useMemo(() => timeScale(first, on, yearWidth), [first, on, yearWidth]);
  const lines = useMemo<readonly QueenId[]>(() => [...new Set(lives.map(({ line }) => line))], [lives]);
  const metrics = metricsFor(width, lives.length);
  const geometry = useMemo(
    () => placeLives(lives, lines, scale, metrics),
    [lives, lines, scale, metrics.lane],
  );
  const view = { ...AT_REST, x: Math.min(0, plot - scale.width) };
  const onTap = (event: MouseEvent) => {
    const frame = (event.currentTarget as Element).getBoundingClientRect();
    const queen = nearest(
      geometry,
      view,
      { x: event.clientX - frame.left, y: event.clientY - frame.top },
      plot,
    );
    if (queen) go(routes.queen(queen));
  };
  return (
    <div ref={box}>
      {width > 0 && (
        <>
          <Axis scale={scale} view={view} plot={plot} winters={NO_COUNTS} />
          {/* biome-ignore lint/a11y/useKeyWithClickEvents: every queen of the drawing is a link in the lists below it. */}
          <div role="img" aria-label={words} onClick={onTap}>
            <SvgLines
              geometry={geometry}
              scale={scale}
              view={view}
              plot={plot}
              gutter={gutter}
              height={geometry.height + 6}
              look={look}
            />
          </div>
        </>
      )}
    </div>
  );
}
