import type { QueenId } from '../../src/journal/ids.ts';
import { hueClass } from './hue-class.ts';
import styles from './LineList.module.css';
import { LineMark } from './LineMark.tsx';
import { ended, hangsOn, survived } from './line-words.ts';
import type { LineSummary } from './summaries.ts';
import { WinterBars } from './WinterBars.tsx';

export interface LineListProps {
  readonly lines: readonly LineSummary[];
  readonly chosen: QueenId | undefined;
  readonly onChoose: (line: QueenId | undefined) => void;
}

/** Each line: on how many queens it hangs, and which winters they came through. A press shows it alone. */
export function LineList({ lines, chosen, onChoose }: LineListProps) {
  return (
    <ul class={styles.list}>
      {lines.map((line) => (
        <li key={line.line} class={`${hueClass(line.hue)} ${line.living === 0 ? styles.over : ''}`}>
          <button
            type="button"
            class={styles.line}
            aria-pressed={chosen === line.line}
            onClick={() => onChoose(chosen === line.line ? undefined : line.line)}
          >
            <span class={styles.head}>
              <LineMark letter={line.letter} hue={line.hue} />
              <i class={`${styles.name} ${line.named ? '' : styles.unnamed}`}>{line.title}</i>
            </span>
            <span class={line.living === 1 ? styles.sole : styles.hangs}>{hangsOn(line)}</span>
            {line.winters.length > 0 && <span class={styles.winters}>{survived(line)}</span>}
            {line.living === 0 && line.expected === 0 && <span class={styles.winters}>{ended(line)}</span>}
          </button>
          {line.winters.length > 0 && <WinterBars winters={line.winters} />}
        </li>
      ))}
    </ul>
  );
}
