import { useEffect, useMemo, useRef } from 'preact/hooks';
import { cullingIndex, inSight } from './culling.ts';
import styles from './drawing.module.css';
import { type Palette, paint } from './paint.ts';
import type { RenderProps } from './SvgLines.tsx';
import { metricsFor } from './sizes.ts';

/** The drawing on a canvas, only what is in sight: for registries of thousands. */
export function CanvasLines({ geometry, scale, view, plot, gutter, height, look }: RenderProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const index = useMemo(() => cullingIndex(geometry), [geometry]);
  const { lane } = metricsFor(plot + gutter, geometry.queens.length);
  useEffect(() => {
    const node = canvas.current;
    const context = node?.getContext('2d');
    if (!node || !context) return;
    const request = requestAnimationFrame(() => {
      const density = window.devicePixelRatio || 1;
      node.width = (plot + gutter) * density;
      node.height = height * density;
      context.setTransform(density, 0, 0, density, 0, 0);
      const seen = inSight(index, view, plot, height);
      const palette = paletteOf(node);
      paint(
        context,
        { geometry, scale, view, plot, gutter, height, look, palette, lane },
        seen.queens,
        seen.joints,
      );
    });
    return () => cancelAnimationFrame(request);
  }, [index, geometry, scale, view, plot, gutter, height, look, lane]);
  return (
    <div aria-hidden="true">
      <canvas ref={canvas} class={styles.canvas} style={{ width: plot + gutter, height }} />
    </div>
  );
}

function paletteOf(element: Element): Palette {
  const style = getComputedStyle(element);
  const read = (name: string) => style.getPropertyValue(name).trim();
  return {
    hues: [1, 2, 3, 4, 5, 6, 7, 8].map((hue) => read(`--line-${hue}`)),
    paper: read('--paper'),
    sunk: read('--paper-sunk'),
    ink: read('--ink'),
    quiet: read('--ink-quiet'),
    rule: read('--rule'),
    closed: read('--rule-strong'),
    wash: read('--accent-wash'),
    nameFont: read('--font-name'),
    textFont: read('--font-text'),
  };
}
