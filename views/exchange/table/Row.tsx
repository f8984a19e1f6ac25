import type { PlannedRow, RowProblem } from '../../../src/exchange/intake/index.ts';
import { columnLetter } from '../../../src/exchange/intake/row.ts';
import { Button } from '../../parts/Button.tsx';
import { plainDays } from '../../parts/days.ts';
import { sentence } from '../../parts/words.ts';
import { rowWords, STATUS_WORDS } from './plan-words.ts';
import styles from './Rows.module.css';

export interface RowProps {
  readonly row: PlannedRow;
  readonly cells: readonly string[];
  /** What the keeper ticked, also while the plan does not follow yet. */
  readonly leftOut: boolean;
  /** Columns whose cell the keeper wrote anew. */
  readonly mended: readonly number[];
  readonly onToggle: () => void;
  /** Writes a cell anew; without a text it is again as it stood in the table. */
  readonly onMend: (column: number, text: string | undefined) => void;
}

/** One row: as it stands in the table, what is written of it, what is wrong with it and can be mended here. */
export function Row({ row, cells, leftOut, mended, onToggle, onMend }: RowProps) {
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
              <Faulty
                key={problem.where + problem.because}
                line={line}
                problem={problem}
                cell={problem.column === undefined ? undefined : cells[problem.column]}
                onMend={onMend}
              />
            ))}
          </ul>
        )}
        {mended.map((column) => (
          <p key={column} class={styles.mended}>
            Column {columnLetter(column)} was changed here.
            <Button look="quiet" onPress={() => onMend(column, undefined)}>
              As it was
            </Button>
          </p>
        ))}
      </td>
      <td class={styles.leave}>
        {!skipped && (
          <label>
            <input
              type="checkbox"
              checked={leftOut}
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

interface FaultyProps {
  readonly line: number;
  readonly problem: RowProblem;
  /** What stands in the cell that is meant; absent when the row as a whole is. */
  readonly cell: string | undefined;
  readonly onMend: RowProps['onMend'];
}

function Faulty({ line, problem: { where, found, because, remedy, column }, cell, onMend }: FaultyProps) {
  // The row stands in front already; the column is what is left to say.
  const place = where.replace(/^Row \d+(, )?/, '');
  return (
    <li>
      <p>
        {place && <strong>{sentence(place)}: </strong>}
        {plainDays(because)} Found: <span class={styles.found}>{found}</span>. {remedyWords(remedy)}
      </p>
      {column !== undefined && cell !== undefined && (
        <label class={styles.mend}>
          <span>Mend it here</span>
          <input
            type="text"
            autocomplete="off"
            aria-label={`Row ${line}, column ${columnLetter(column)} anew`}
            value={cell}
            onChange={(event) => onMend(column, event.currentTarget.value)}
          />
        </label>
      )}
    </li>
  );
}

/** Days that a remedy gives as examples stay as they are to be typed. */
function remedyWords(remedy: string): string {
  return /^Write .*\d{4}-\d\d/.test(remedy) ? remedy : plainDays(remedy);
}
