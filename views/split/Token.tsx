import type { ComponentChildren } from 'preact';
import styles from './Token.module.css';
import { useDrag } from './use-drag.ts';

export interface TokenProps {
  readonly children: ComponentChildren;
  readonly label: string;
  readonly inHand: boolean;
  readonly onLift: () => void;
  readonly onDrop: (part: string) => void;
  /** Puts back what was lifted with a tap on it again. */
  readonly onPutBack: () => void;
  readonly look?: 'frame' | 'queen';
}

/** Something that can be lifted: by a tap, then set down by a tap on a box; or dragged there with a mouse. */
export function Token({ children, label, inHand, onLift, onDrop, onPutBack, look = 'frame' }: TokenProps) {
  const { isTap, ...drag } = useDrag(onLift, onDrop);
  return (
    <button
      type="button"
      class={`${styles.token} ${styles[look]}`}
      aria-pressed={inHand}
      aria-label={label}
      onClick={() => isTap() && (inHand ? onPutBack() : onLift())}
      {...drag}
    >
      {children}
    </button>
  );
}
