import type { MarkColour } from '../../src/journal/entries/queen.ts';
import styles from './MarkDot.module.css';

const LETTERS: Readonly<Record<MarkColour, string>> = {
  white: 'W',
  yellow: 'Y',
  red: 'R',
  green: 'G',
  blue: 'B',
  other: '·',
};

export interface MarkDotProps {
  readonly colour: MarkColour;
  readonly number?: string | undefined;
}

/** The mark on a queen's back: its colour, the letter of the colour, and the number if she bears one. */
export function MarkDot({ colour, number }: MarkDotProps) {
  const words = `marked ${colour === 'other' ? 'in another colour' : colour}${number ? `, number ${number}` : ''}`;
  return (
    <span class={`${styles.dot} ${styles[colour]}`} role="img" aria-label={words} title={words}>
      {LETTERS[colour]}
      {number && <span class={styles.number}>{number}</span>}
    </span>
  );
}
