import styles from './drawing.module.css';
import type { Joint } from './geometry.ts';
import { hueClass } from './hue-class.ts';
import type { View } from './view.ts';
import { viewX, viewY } from './view.ts';

export interface JointMarkProps {
  readonly joint: Joint;
  readonly hue: number;
  readonly view: View;
  readonly faded: boolean;
  readonly tooltip: string;
}

/** How far a daughter's line bends out of the joint's, in pixels. */
const BEND = 6;

const BY_THE_BEES = new Set(['swarm', 'supersedure', 'emergency']);

/** The event that made sisters: a joint on their dam's life, and from it a line to each; broken where she is probable. */
export function JointMark({ joint, hue, view, faded, tooltip }: JointMarkProps) {
  const x = viewX(view, joint.x);
  const y = viewY(view, joint.y);
  const names = [styles.joint, hueClass(hue), joint.carries ? '' : styles.closed, faded ? styles.faded : ''];
  const hollow = BY_THE_BEES.has(joint.how);
  return (
    <g class={names.join(' ')}>
      <title>{tooltip}</title>
      {closedFirst(joint.daughters).map((daughter) => (
        <path
          key={daughter.id}
          class={`${daughter.firm ? styles.firm : styles.probable} ${daughter.carries ? '' : styles.closed}`}
          d={limb(x, y, viewY(view, daughter.y))}
        />
      ))}
      <rect class={hollow ? styles.byBees : styles.byHand} x={x - 3.5} y={y - 3.5} width="7" height="7" />
    </g>
  );
}

/** Limbs that lead to living queens lie over those that do not. */
function closedFirst(daughters: Joint['daughters']): Joint['daughters'] {
  return [...daughters].sort((a, b) => Number(a.carries) - Number(b.carries));
}

function limb(x: number, top: number, y: number): string {
  const bend = Math.min(BEND, Math.abs(y - top));
  return `M${x} ${top}V${y - Math.sign(y - top) * bend}q0 ${Math.sign(y - top) * bend} ${bend} ${Math.sign(y - top) * bend}`;
}
