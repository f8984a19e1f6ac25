import { useId } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { LineHeads, NamesBeside } from './DrawingText.tsx';
import { DronePaths } from './DronePaths.tsx';
import styles from './drawing.module.css';
import type { Geometry } from './geometry.ts';
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
      <LineHeads geometry={geometry} view={view} width={plot + gutter} look={look} />
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
      <NamesBeside
        geometry={geometry}
        view={view}
        plot={plot}
        gutter={gutter}
        look={look}
        isFaded={isFaded}
      />
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
