import type { ComponentChildren } from 'preact';
import drawing from './drawing.module.css';
import { hueClass } from './hue-class.ts';
import styles from './Legend.module.css';
import { EndMark } from './QueenLife.tsx';

/** What the marks of the drawing mean. */
export function Legend() {
  return (
    <ul class={`${styles.legend} ${hueClass(1)}`}>
      <Sample words="heads a colony, lives today">
        <path class={drawing.heads} d="M2 10H38" />
        <EndMark fate="living" x={40} y={10} />
      </Sample>
      <Sample words="a winter crossed">
        <path class={drawing.heads} d="M2 10H46" />
        <circle class={drawing.knot} cx="24" cy="10" r="4" />
      </Sample>
      <Sample words="awaited: cells, eggs or a virgin">
        <path class={drawing.awaited} d="M2 10H36" />
        <EndMark fate="expected" x={40} y={10} />
      </Sample>
      <Sample words="came to nothing">
        <path class={drawing.awaited} d="M2 10H36" />
        <EndMark fate="failed" x={38} y={10} />
      </Sample>
      <Sample words="died or replaced">
        <path class={drawing.heads} d="M2 10H38" />
        <EndMark fate="died" x={38} y={10} />
      </Sample>
      <Sample words="left alive: given away, swarmed">
        <path class={drawing.heads} d="M2 10H36" />
        <EndMark fate="left" x={38} y={10} />
      </Sample>
      <Sample words="made by hand: split, cells, graft">
        <path class={drawing.heads} d="M2 5H46" />
        <path class={drawing.firm} d="M14 5V12q0 6 6 6H46" />
        <rect class={drawing.byHand} x="10.5" y="1.5" width="7" height="7" />
      </Sample>
      <Sample words="made by the bees; dam only probable">
        <path class={drawing.heads} d="M2 5H46" />
        <path class={drawing.probable} d="M14 5V12q0 6 6 6H46" />
        <rect class={drawing.byBees} x="10.5" y="1.5" width="7" height="7" />
      </Sample>
      <Sample words="no living queen below" closed>
        <path class={drawing.heads} d="M2 10H38" />
        <EndMark fate="died" x={38} y={10} />
      </Sample>
    </ul>
  );
}

interface SampleProps {
  readonly words: string;
  readonly closed?: boolean;
  readonly children: ComponentChildren;
}

function Sample({ words, closed = false, children }: SampleProps) {
  return (
    <li>
      <svg class={drawing.svg} width="48" height="20" aria-hidden="true">
        <g class={`${drawing.life} ${closed ? drawing.closed : ''}`}>{children}</g>
      </svg>
      {words}
    </li>
  );
}
