import styles from './drawing.module.css';
import type { DroneSources } from './drone-sources.ts';
import type { Geometry } from './geometry.ts';
import { type View, viewX, viewY } from './view.ts';

export interface DronePathsProps {
  readonly drones: DroneSources;
  readonly geometry: Geometry;
  readonly view: View;
}

/** From each queen whose drones she may have met, a dotted line to the day she flew. */
export function DronePaths({ drones, geometry, view }: DronePathsProps) {
  const met = geometry.byId.get(drones.queen);
  if (!met) return null;
  const x = viewX(view, met.laying ?? met.from);
  const y = viewY(view, met.y);
  return drones.mothers.map(({ queen, share }) => {
    const mother = geometry.byId.get(queen);
    if (!mother || mother === met) return null;
    const from = viewY(view, mother.y);
    const bow = Math.min(40, 8 + Math.abs(y - from) / 8);
    return (
      <path
        key={queen}
        class={styles.drones}
        stroke-width={1 + 4 * share}
        d={`M${x} ${from}C${x - bow} ${from + (y - from) / 3} ${x - bow} ${y - (y - from) / 3} ${x} ${y}`}
      />
    );
  });
}
