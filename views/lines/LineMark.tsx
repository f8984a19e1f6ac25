import { hueClass } from './hue-class.ts';
import styles from './LineMark.module.css';

/** The letter of a line on its colour. Read out as "line B". */
export function LineMark({ letter, hue }: { readonly letter: string; readonly hue: number }) {
  return (
    <span class={`${styles.mark} ${hueClass(hue)}`} role="img" aria-label={`line ${letter}`}>
      {letter}
    </span>
  );
}
