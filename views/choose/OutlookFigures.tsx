import type { SeasonOutlook } from '../../graph/choice/look-ahead/look-ahead.ts';
import { useWidth } from '../parts/use-width.ts';
import styles from './OutlookFigures.module.css';
import { OutlookTable } from './OutlookTable.tsx';
import { drawOutlook, type Figure } from './outlook-scale.ts';
import { endWords, FIGURES } from './outlook-words.ts';
import { markDigits, spreads } from './words.ts';

export interface OutlookFiguresProps {
  readonly seasons: readonly SeasonOutlook[];
  /** The run before, drawn faintly. */
  readonly before: readonly SeasonOutlook[] | undefined;
}

const HEIGHT = 150;
const MARGIN = { top: 10, right: 10, bottom: 26, left: 44 };

/** Four figures over the seasons, each a band that holds nine histories in ten and the middle one. */
export function OutlookFigures({ seasons, before }: OutlookFiguresProps) {
  const { box, width } = useWidth();
  const each = width >= 560 ? Math.floor((width - 24) / 2) : width;
  const last = seasons.at(-1);
  return (
    <div class={styles.figures} ref={box}>
      {last && <p class={styles.lead}>{endWords(last)}</p>}
      {width > 0 && (
        <div class={styles.grid}>
          {FIGURES.map(({ figure, title, say }) => (
            <figure key={figure}>
              <figcaption>{title}</figcaption>
              <FigureSvg {...{ seasons, before, figure, say }} width={each} />
            </figure>
          ))}
        </div>
      )}
      <p class={styles.quiet}>
        Band: nine histories in ten. Line: the middle one.
        {before && ' Broken line: the middle of the run before.'}
      </p>
      <OutlookTable seasons={seasons} />
    </div>
  );
}

interface FigureSvgProps extends OutlookFiguresProps {
  readonly figure: Figure;
  readonly say: (value: number) => string;
  readonly width: number;
}

function FigureSvg({ seasons, before, figure, say, width }: FigureSvgProps) {
  const drawing = drawOutlook(seasons, before, figure, { width, height: HEIGHT, margin: MARGIN });
  const gainDigits = markDigits(
    drawing.ticks.map(({ value }) => value),
    1,
  );
  return (
    <svg width={width} height={HEIGHT} aria-hidden="true">
      {drawing.ticks.map(({ value, y }) => (
        <g key={value}>
          <line class={styles.line} x1={MARGIN.left} x2={width - MARGIN.right} y1={y} y2={y} />
          <text class={styles.tick} x={MARGIN.left - 6} y={y + 5} text-anchor="end">
            {figure === 'gain' ? spreads(value, gainDigits) : say(value)}
          </text>
        </g>
      ))}
      <path class={styles.band} d={drawing.band} />
      {drawing.before && <path class={styles.before} d={drawing.before} />}
      <path class={styles.median} d={drawing.median} />
      {drawing.seasons.map(({ season, x }) => (
        <text key={season} class={styles.tick} x={x} y={HEIGHT - 6} text-anchor="middle">
          {season === 0 ? 'now' : season}
        </text>
      ))}
    </svg>
  );
}
