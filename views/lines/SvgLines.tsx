import { useId } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { DronePaths } from './DronePaths.tsx';
import styles from './drawing.module.css';
import type { Geometry } from './geometry.ts';
import { hueClass } from './hue-class.ts';
import { JointMark } from './JointMark.tsx';
import type { Look } from './look.ts';
import { LifeNames, QueenLife } from './QueenLife.tsx';
import type { TimeScale } from './time-scale.ts';
import { type View, viewX, viewY } from './view.ts';

export interface RenderProps {
  readonly geometry: Geometry;
  readonly scale: TimeScale;
  readonly view: View;
  /** Width of the part with the lives, and of the names beside it; height of the window. */
  readonly plot: number;
  readonly gutter: number;
  readonly height: number;
  readonly look: Look;
}

/** The drawing as SVG: for families of some hundred queens, and for paper. */
export function SvgLines({ geometry, scale, view, plot, gutter, height, look }: RenderProps) {
  const plotOnly = useId();
  const clip = `url(#${plotOnly})`;
  const isFaded = (id: QueenId) => look.family !== undefined && !look.family.has(id);
  // With today at the edge, a name may run out over it: its lane has nobody alive in it.
  const todayInSight = viewX(view, geometry.width) <= plot + 1;
  return (
    <svg class={styles.svg} width={plot + gutter} height={height} aria-hidden="true">
      <clipPath id={plotOnly}>
        <rect x="0" y="0" width={plot + 6} height={height} />
      </clipPath>
      <g clip-path={clip}>
        <Winters scale={scale} view={view} height={height} />
      </g>
      <Strips geometry={geometry} view={view} width={plot + gutter} look={look} />
      {look.chosen.map((id) => {
        const queen = geometry.byId.get(id);
        return (
          queen && (
            <rect
              key={id}
              class={styles.chosenLane}
              x="0"
              y={viewY(view, queen.y) - 18}
              width={plot + gutter}
              height="26"
            />
          )
        );
      })}
      <g clip-path={clip}>
        {geometry.joints.map((joint) => (
          <JointMark
            key={joint.key}
            joint={joint}
            hue={look.hue(joint.dam)}
            view={view}
            faded={isFaded(joint.dam) || joint.daughters.every(({ id }) => isFaded(id))}
            tooltip={look.jointWords(joint)}
          />
        ))}
        {geometry.queens.map((queen) => (
          <QueenLife
            key={queen.life.id}
            queen={queen}
            hue={look.hue(queen.life.id)}
            view={view}
            faded={isFaded(queen.life.id)}
            chosen={look.chosen.includes(queen.life.id)}
            tooltip={look.queenWords(queen.life)}
          />
        ))}
        {look.drones && <DronePaths drones={look.drones} geometry={geometry} view={view} />}
      </g>
      <g clip-path={todayInSight ? undefined : clip}>
        <LifeNames queens={geometry.queens} view={view} plot={plot} isFaded={isFaded} />
      </g>
      <line
        class={todayInSight ? styles.today : styles.edge}
        x1={plot + 0.5}
        x2={plot + 0.5}
        y1="0"
        y2={height}
      />
      <Names geometry={geometry} view={view} plot={plot} gutter={gutter} look={look} isFaded={isFaded} />
    </svg>
  );
}

function Winters({ scale, view, height }: Pick<RenderProps, 'scale' | 'view' | 'height'>) {
  return scale.years.map(({ year, winter }) => {
    if (!winter) return null;
    const from = viewX(view, winter.from);
    const to = viewX(view, winter.to);
    return (
      <g key={year}>
        <rect class={styles.winter} x={from} y="0" width={Math.max(0, to - from)} height={height} />
        {winter.over && <line class={styles.winterEnd} x1={to} x2={to} y1="0" y2={height} />}
      </g>
    );
  });
}

function Strips({
  geometry,
  view,
  width,
  look,
}: Pick<RenderProps, 'geometry' | 'view' | 'look'> & { width: number }) {
  return geometry.strips.map(({ line, y }, index) => {
    const top = viewY(view, y);
    const title = look.lineTitle(line);
    return (
      <g key={line} class={hueClass(look.hue(line))}>
        {index > 0 && <line class={styles.stripRule} x1="0" x2={width} y1={top + 0.5} y2={top + 0.5} />}
        <rect class={styles.badge} x="0" y={top + 7} width="20" height="19" rx="3" />
        <text class={styles.letter} x="10" y={top + 21}>
          {title.letter}
        </text>
        <text class={styles.lineName} x="28" y={top + 22}>
          {title.name}
          <tspan class={styles.lineNote} dx="8">
            {title.note}
          </tspan>
        </text>
      </g>
    );
  });
}

interface NamesProps extends Pick<RenderProps, 'geometry' | 'view' | 'plot' | 'gutter' | 'look'> {
  readonly isFaded: (id: QueenId) => boolean;
}

/** The names of those alive and awaited today, each at the end of her life line. */
function Names({ geometry, view, plot, gutter, look, isFaded }: NamesProps) {
  return geometry.queens.map(({ life, y, from }) => {
    // Looking back, whoever was not born yet has no name here.
    const label = viewX(view, from) <= plot && look.hereLabel(life, gutter - 16);
    return (
      label && (
        <text
          key={life.id}
          class={`${styles.here} ${life.named ? '' : styles.unnamed} ${isFaded(life.id) ? styles.faded : ''}`}
          x={plot + 12}
          y={viewY(view, y) + 5}
        >
          {label.name}
          {label.box && (
            <tspan class={styles.box} dx="7">
              {label.box}
            </tspan>
          )}
        </text>
      )
    );
  });
}
