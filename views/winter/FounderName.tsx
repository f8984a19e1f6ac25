import { routes } from '../app/routes.ts';
import { LineMark } from '../lines/LineMark.tsx';
import type { LineSummary } from '../lines/summaries.ts';
import styles from './FounderName.module.css';

/** A line by its letter and its founder, as everywhere; the name opens the founder. */
export function FounderName({ line }: { readonly line: LineSummary }) {
  return (
    <span class={styles.founder}>
      <LineMark letter={line.letter} hue={line.hue} /> Line of{' '}
      <a href={routes.queen(line.line)}>
        <i>{line.title}</i>
      </a>
    </span>
  );
}
