import type { PlannedRow } from '../../../src/exchange/intake/index.ts';
import type { Problem } from '../../../src/journal/problems.ts';
import { plainDays } from '../../parts/days.ts';
import { sentence } from '../../parts/words.ts';
import { rowWords, STATUS_WORDS } from './plan-words.ts';
import styles from './Rows.module.css';

export interface RowProps {
  readonly row: PlannedRow;
  readonly cells: readonly string[];
  readonly onToggle: () => void;
}

/** One row: as it stands in the table, what is written of it, what is wrong with it. */
export function Row({ row, cells, onToggle }: RowProps) {
  const { line, status, summary, problems } = row;
  const skipped = status === 'skipped';
  const full = cells.filter((cell) => cell !== '');
  return (
    <tr class={`${styles.row} ${styles[status] ?? ''}`}>
      <th scope="row">
        <span class={styles.word}>Row </span>
        {line}
      </th>
      <td class={styles.cells}>{full.join(' · ')}</td>
      <td class={styles.written}>
        {status !== 'ready' && !skipped && <p class={styles.status}>{sentence(STATUS_WORDS[status])}</p>}
        {summary && <p>{sentence(rowWords(summary))}</p>}
        {problems.length > 0 && (
          <ul class={styles.problems}>
            {problems.map((problem) => (
              <RowProblem key={problem.where + problem.because + problem.found} problem={problem} />
            ))}
          </ul>
        )}
      </td>
      <td class={styles.leave}>
        {!skipped && (
          <label>
            <input
              type="checkbox"
              checked={status === 'left-out'}
              onChange={onToggle}
              aria-label={`Leave row ${line} out`}
            />
            <span class={styles.word}>Leave out</span>
          </label>
        )}
      </td>
    </tr>
  );
}

function RowProblem({ problem: { where, found, because, remedy } }: { readonly problem: Problem }) {
  // The row stands in front already; the column is what is left to say.
  const column = where.replace(/^Row \d+(, )?/, '');
  return (
    <li>
      {column && <strong>{sentence(column)}: </strong>}
      {plainDays(because)} Found: <span class={styles.found}>{found}</span>. {plainDays(remedy)}
    </li>
  );
}
