import { useMemo } from 'preact/hooks';
import type { PlainDay } from '../../../src/journal/day.ts';
import lineStyles from '../../lines/drawing.module.css';
import { type DrawnQueen, type Geometry, placeLives } from '../../lines/geometry.ts';
import { JointMark } from '../../lines/JointMark.tsx';
import type { Life } from '../../lines/lives.ts';
import { LifeNames, QueenLife } from '../../lines/QueenLife.tsx';
import { metricsFor } from '../../lines/sizes.ts';
import { fitText } from '../../lines/text-width.ts';
import { drawnYears, type TimeScale, timeScale } from '../../lines/time-scale.ts';
import { AT_REST } from '../../lines/view.ts';
import { useWidth } from '../../parts/use-width.ts';
import styles from './Card.module.css';
import type { CardFacts } from './card-facts.ts';

const AXIS = 26;
const LANE = 32;
const NAME_SIZE = 16;

/** Her dam line and her daughters as lives in time, the founder on top: knots are winters crossed, broken lines probable. */
export function CardDrawing({
  facts,
  on,
  words,
}: {
  readonly facts: CardFacts;
  readonly on: PlainDay;
  readonly words: string;
}) {
  const { box, width } = useWidth();
  const { lives, hue, queen } = facts;
  const gutter = width < 480 ? 92 : 132;
  const plot = Math.max(0, width - gutter);
  const first = Math.min(...lives.map(({ start }) => start));
  const scale = useMemo(
    () => timeScale(first, on, plot / Math.max(0.5, drawnYears(first, on))),
    [first, on, plot],
  );
  const geometry = useMemo(() => place(lives, scale, width), [lives, scale, width]);
  const height = AXIS + geometry.height + 8;
  return (
    <div ref={box} class={styles.drawing}>
      {width > 0 && (
        <svg
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          class={lineStyles.svg}
          role="img"
          aria-label={words}
        >
          <Years scale={scale} height={height} />
          <g transform={`translate(0 ${AXIS})`}>
            {geometry.joints.map((joint) => (
              <JointMark key={joint.key} joint={joint} hue={hue} view={AT_REST} faded={false} tooltip="" />
            ))}
            {geometry.queens.map((drawn) => (
              <QueenLife
                key={drawn.life.id}
                queen={drawn}
                hue={hue}
                view={AT_REST}
                faded={false}
                chosen={drawn.life.id === queen.id}
                tooltip={drawn.life.title}
              />
            ))}
            <LifeNames queens={geometry.queens} view={AT_REST} plot={plot} isFaded={() => false} />
            {geometry.queens.map((drawn) => (
              <HereName key={drawn.life.id} drawn={drawn} x={plot + 12} room={gutter - 14} />
            ))}
          </g>
          <line class={lineStyles.today} x1={plot + 0.5} x2={plot + 0.5} y1={AXIS} y2={height} />
        </svg>
      )}
    </div>
  );
}

function place(lives: readonly Life[], scale: TimeScale, width: number): Geometry {
  const lines = [...new Set(lives.map(({ line }) => line))];
  return placeLives(lives, lines, scale, { ...metricsFor(width, lives.length), stripHead: 8, lane: LANE });
}

/** Those alive or awaited have their names beside the drawing. */
function HereName({
  drawn: { life, y },
  x,
  room,
}: {
  readonly drawn: DrawnQueen;
  readonly x: number;
  readonly room: number;
}) {
  if (life.fate !== 'living' && life.fate !== 'expected') return null;
  const name = life.named ? life.title : life.fate === 'expected' ? 'awaited' : 'unnamed';
  return (
    <text class={`${lineStyles.here} ${life.named ? '' : lineStyles.unnamed}`} x={x} y={y + 5}>
      {fitText(name, NAME_SIZE, room)}
    </text>
  );
}

const YEAR_ROOM = 42;

function Years({ scale, height }: { readonly scale: TimeScale; readonly height: number }) {
  return scale.years.map(({ year, from, to, winter }) => {
    const until = winter?.from ?? to;
    const room = until - from;
    return (
      <g key={year}>
        {room > YEAR_ROOM * 0.55 && (
          <text class={styles.year} x={(from + until) / 2} y="16">
            {room > YEAR_ROOM ? year : `’${String(year).slice(2)}`}
          </text>
        )}
        {winter && (
          <rect
            class={lineStyles.winter}
            x={winter.from}
            y={AXIS}
            width={Math.max(0, winter.to - winter.from)}
            height={height}
          />
        )}
      </g>
    );
  });
}
