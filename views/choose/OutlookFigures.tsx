import type { SeasonOutlook } from '../../graph/choice/look-ahead/look-ahead.ts';
import type { Bands } from '../../graph/numerics/bands.ts';
import { useWidth } from '../parts/use-width.ts';
import styles from './OutlookFigures.module.css';
import { drawOutlook, type Figure } from './outlook-scale.ts';
import { markDigits, oneIn, percents, spreads } from './words.ts';

export interface OutlookFiguresProps {
  readonly seasons: readonly SeasonOutlook[];
  /** The run before, drawn faintly. */
  readonly before: readonly SeasonOutlook[] | undefined;
}

const FIGURES: readonly {
  readonly figure: Figure;
  readonly title: string;
  readonly say: (value: number) => string;
}[] = [
  { figure: 'gain', title: 'Gain in merit, spreads', say: spreads },
  { figure: 'inbreeding', title: 'Inbreeding of the queens', say: percents },
  { figure: 'alleles', title: 'Sex alleles among them', say: (value) => String(Math.round(value)) },
  { figure: 'lines', title: 'Lines left', say: (value) => String(Math.round(value)) },
];

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

function endWords({ season, gain, inbreeding, alleles, lines, lost }: SeasonOutlook): string {
  const gone = lost > 0.005 ? ` In ${oneIn(lost)} histories every colony was lost on the way.` : '';
  if (!gain || !inbreeding) return `After ${season} seasons no history has a colony left.`;
  return (
    `After ${season} seasons: gain ${bandWords(gain, spreads)}, inbreeding ${bandWords(inbreeding, percents)}, ` +
    `sex alleles ${bandWords(alleles, whole)}, lines ${bandWords(lines, whole)}.${gone}`
  );
}

const whole = (value: number) => String(Math.round(value));

function bandWords(bands: Bands, say: (value: number) => string): string {
  return `${say(bands.median)} (${rangeWords(bands, say)})`;
}

function rangeWords({ low, high }: Pick<Bands, 'low' | 'high'>, say: (value: number) => string): string {
  return `${say(low).replace('\u00a0%', '')} to ${say(high)}`;
}

function OutlookTable({ seasons }: Pick<OutlookFiguresProps, 'seasons'>) {
  return (
    <details class={styles.table}>
      <summary>The figures as a table</summary>
      <div class={styles.scroll}>
        <table>
          <thead>
            <tr>
              <th scope="col">Season</th>
              {FIGURES.map(({ figure, title }) => (
                <th key={figure} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {seasons.map((each) => (
              <tr key={each.season}>
                <th scope="row">{each.season === 0 ? 'now' : each.season}</th>
                {FIGURES.map(({ figure, say }) => {
                  const bands = each[figure];
                  return (
                    <td key={figure}>
                      {bands ? (
                        <>
                          <strong>{say(bands.median)}</strong>{' '}
                          <span class={styles.range}>{rangeWords(bands, say)}</span>
                        </>
                      ) : (
                        '–'
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
