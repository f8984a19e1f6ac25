import { dayNumber, firstDay, lastDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { TreatmentSpan } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';
import { type LifeScale, ticks } from '../colony/life-scale.ts';
import styles from './ChartDrawing.module.css';
import { type ChartScale, type ChartSize, thresholdStretches } from './chart-scale.ts';
import type { CountSaid } from './counts.ts';
import { scaleTicks } from './scale.ts';
import { figureText } from './words.ts';

export interface ChartDrawingProps {
  readonly shown: readonly CountSaid[];
  readonly treatments: readonly TreatmentSpan[];
  readonly scale: ChartScale;
  readonly size: ChartSize;
  readonly height: number;
}

/** Limits of each count upright, thresholds as broken lines over their months, treatments as bands. */
export function ChartDrawing({ shown, treatments, scale, size, height }: ChartDrawingProps) {
  const { x, y } = scale;
  const thresholds = useStore().settings.value.miteThresholds;
  const method = shown.at(-1)?.entry.sample.method ?? 'wash';
  const life: LifeScale = {
    x: (day) => x(dayNumber(firstDay(day))),
    from: scale.from,
    to: scale.to,
    width: size.width,
  };
  const percent = shown[0]?.figure.unit === '%';
  return (
    <svg
      width={size.width}
      height={height}
      role="img"
      aria-label="Mite counts over time; the same stands in the table below"
    >
      <text class={styles.unit} x="0" y="12">
        {percent ? 'Mites, % of bees' : 'Mites fallen a day'}
      </text>
      {scaleTicks(scale.most, 4).map((tick) => (
        <g key={tick}>
          <line class={styles.grid} x1={size.left} x2={size.width} y1={y(tick)} y2={y(tick)} />
          <text class={styles.tick} x={size.left - 6} y={y(tick) + 4}>
            {tick}
          </text>
        </g>
      ))}
      <Treatments treatments={treatments} scale={scale} size={size} />
      {thresholdStretches(thresholds, method, scale.from, scale.to).map(({ value, from, to }) => (
        <line
          key={`${value} ${from}`}
          class={styles.threshold}
          x1={Math.max(size.left, x(from))}
          x2={x(to)}
          y1={y(value)}
          y2={y(value)}
        />
      ))}
      {shown.map((said) => (
        <Mark key={said.entry.id} said={said} scale={scale} />
      ))}
      <line class={styles.axis} x1={size.left} x2={size.width} y1={size.base} y2={size.base} />
      {ticks(life).map(({ at, label, year }) => (
        <g key={at} transform={`translate(${at} ${size.base})`}>
          <line class={styles.axis} y2={year ? 8 : 5} />
          <text class={year ? styles.year : styles.month} x="3" y="17">
            {label}
          </text>
        </g>
      ))}
    </svg>
  );
}

function Treatments({ treatments, scale, size }: Pick<ChartDrawingProps, 'treatments' | 'scale' | 'size'>) {
  let labelled = Number.NEGATIVE_INFINITY;
  return (
    <>
      {treatments.map((span) => {
        const from = Math.max(scale.from, dayNumber(firstDay(span.from)));
        const to = Math.min(scale.to, span.to ? dayNumber(lastDay(span.to)) : scale.to);
        if (to <= from) return null;
        const start = Math.max(size.left, scale.x(from));
        const room = start - labelled > 84;
        if (room) labelled = start;
        return (
          <g key={span.id}>
            <title>{`${span.entry.active}, from ${dayText(span.from)}${span.to ? ` to ${dayText(span.to)}` : ''}`}</title>
            <rect
              class={styles.treatment}
              x={start}
              y={size.top}
              width={Math.max(3, scale.x(to) - start)}
              height={size.base - size.top}
            />
            {room && (
              <text class={styles.active} x={start} y={size.top - 4}>
                {span.entry.active}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}

function Mark({ said, scale }: { readonly said: CountSaid; readonly scale: ChartScale }) {
  const { figure, entry, setAside } = said;
  const at = scale.x(dayNumber(firstDay(entry.day)));
  return (
    <g>
      <title>{`${dayText(entry.day)}: ${figureText(figure)}`}</title>
      <line
        class={setAside ? styles.asideLimits : styles.limits}
        x1={at}
        x2={at}
        y1={scale.y(figure.low)}
        y2={scale.y(figure.high)}
      />
      {figure.value > 0 && (
        <circle class={setAside ? styles.asideDot : styles.dot} cx={at} cy={scale.y(figure.value)} r="4" />
      )}
    </g>
  );
}
