import { useState } from 'preact/hooks';
import type { QueenId } from '../../src/journal/ids.ts';
import { hueClass } from './hue-class.ts';
import styles from './LineList.module.css';
import { LineMark } from './LineMark.tsx';
import { besides, ended, hangsOn, survived, verdict } from './line-words.ts';
import type { LineSummary } from './summaries.ts';
import { WinterBars } from './WinterBars.tsx';
import { monthText } from './words.ts';

export interface LineListProps {
  readonly lines: readonly LineSummary[];
  readonly chosen: QueenId | undefined;
  readonly onChoose: (line: QueenId | undefined) => void;
}

/** Lines shown before the rest is asked for. */
const AT_FIRST = 8;

/** Each line: on how many queens it hangs, and which winters they came through. A press shows it alone. */
export function LineList({ lines, chosen, onChoose }: LineListProps) {
  const [all, setAll] = useState(false);
  const more = lines.length > AT_FIRST + 1;
  return (
    <ul class={styles.list}>
      {(more && !all ? lines.slice(0, AT_FIRST) : lines).map((line) => (
        <li key={line.line} class={`${hueClass(line.hue)} ${line.living === 0 ? styles.over : ''}`}>
          <button
            type="button"
            class={styles.line}
            aria-pressed={chosen === line.line}
            onClick={() => onChoose(chosen === line.line ? undefined : line.line)}
          >
            <span class={styles.head}>
              <LineMark letter={line.letter} hue={line.hue} />
              <i class={`${styles.name} ${line.named ? '' : styles.unnamed}`}>
                {line.title}
                {!line.named && `, ${monthText(line.since).slice(-4)}`}
              </i>
            </span>
            <span>
              <span class={line.living === 1 ? styles.sole : styles.hangs}>{hangsOn(line)}</span>
              {besides(line) && <span class={styles.besides}> {besides(line)}</span>}
            </span>
            {line.winters.length > 0 && (
              <span class={styles.winters}>
                {survived(line)}
                {verdict(line) && `, ${verdict(line)}`}
              </span>
            )}
            {line.living === 0 && line.expected === 0 && <span class={styles.winters}>{ended(line)}</span>}
          </button>
          {line.winters.length > 0 && <WinterBars winters={line.winters} />}
        </li>
      ))}
      {more && (
        <li>
          <button type="button" class={styles.more} aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? 'Fewer lines' : `All ${lines.length} lines`}
          </button>
        </li>
      )}
    </ul>
  );
}
