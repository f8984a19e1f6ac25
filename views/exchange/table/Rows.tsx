import { useState } from 'preact/hooks';
import { cellKey, type IntakePlan, type PlannedRow, type Table } from '../../../src/exchange/intake/index.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import type { TableWork } from '../incoming.ts';
import { countStatus, draftsSentence, statusSentence } from './plan-words.ts';
import { Row } from './Row.tsx';
import styles from './Rows.module.css';

export interface RowsProps {
  readonly table: Table;
  readonly plan: IntakePlan;
  readonly work: TableWork;
  readonly onWork: (work: TableWork) => void;
}

type Shown = 'all' | 'check';
/** Rows on the page at first; a table of thousands is opened bit by bit. */
const STEP = 100;

/** What every row would write, with its problems by row and column; on a phone as cards, at a desk as a table. */
export function Rows({ table, plan, work, onWork }: RowsProps) {
  const [shown, setShown] = useState<Shown>('all');
  const [most, setMost] = useState(STEP);
  const counts = countStatus(plan.rows);
  const toCheck = plan.rows.filter(({ problems }) => problems.length > 0);
  const filtered = shown === 'check' && toCheck.length > 0 ? toCheck : plan.rows;
  const cells = new Map(table.rows.map((row) => [row.line, row.cells]));
  const toggle = ({ line }: PlannedRow) => {
    const leaveOut = new Set(work.leaveOut);
    if (!leaveOut.delete(line)) leaveOut.add(line);
    onWork({ ...work, leaveOut });
  };
  const mend = ({ line }: PlannedRow, column: number, text: string | undefined) => {
    const mended = new Map(work.mended);
    if (text === undefined) mended.delete(cellKey(line, column));
    else mended.set(cellKey(line, column), text);
    onWork({ ...work, mended });
  };
  return (
    <>
      <p class={styles.sum}>
        {statusSentence(counts)} {plan.drafts.length > 0 && <>New: {draftsSentence(plan)}.</>}
      </p>
      {toCheck.length > 0 && (
        <ChoiceRow
          label="Which rows"
          hideLabel
          required
          size="quiet"
          value={shown}
          onChange={(next) => next && setShown(next)}
          options={[
            { value: 'all', label: `All ${plan.rows.length}` },
            { value: 'check', label: `To check ${toCheck.length}` },
          ]}
        />
      )}
      <table class={styles.rows}>
        <thead>
          <tr>
            <th scope="col">Row</th>
            <th scope="col">In your table</th>
            <th scope="col">What is written</th>
            <th scope="col">Leave out</th>
          </tr>
        </thead>
        <tbody>
          {filtered.slice(0, most).map((row) => (
            <Row
              key={row.line}
              row={row}
              cells={cells.get(row.line) ?? []}
              leftOut={work.leaveOut.has(row.line)}
              mended={table.header.flatMap((_, column) =>
                work.mended.has(cellKey(row.line, column)) ? [column] : [],
              )}
              onToggle={() => toggle(row)}
              onMend={(column, text) => mend(row, column, text)}
            />
          ))}
        </tbody>
      </table>
      {filtered.length > most && (
        <div>
          <Button onPress={() => setMost(most + STEP * 5)}>Show more of {filtered.length} rows</Button>
        </div>
      )}
    </>
  );
}
