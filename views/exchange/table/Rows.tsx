import { useState } from 'preact/hooks';
import type { IntakePlan, PlannedRow, Table } from '../../../src/exchange/intake/index.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { countStatus, draftsSentence, statusSentence } from './plan-words.ts';
import { Row } from './Row.tsx';
import styles from './Rows.module.css';

export interface RowsProps {
  readonly table: Table;
  readonly plan: IntakePlan;
  readonly leaveOut: ReadonlySet<number>;
  readonly onLeaveOut: (leaveOut: ReadonlySet<number>) => void;
}

type Shown = 'all' | 'check';
/** Rows on the page at first; a table of thousands is opened bit by bit. */
const STEP = 100;

/** What every row would write, with its problems by row and column; on a phone as cards, at a desk as a table. */
export function Rows({ table, plan, leaveOut, onLeaveOut }: RowsProps) {
  const [shown, setShown] = useState<Shown>('all');
  const [most, setMost] = useState(STEP);
  const counts = countStatus(plan.rows);
  const toCheck = plan.rows.filter(({ problems }) => problems.length > 0);
  const filtered = shown === 'check' && toCheck.length > 0 ? toCheck : plan.rows;
  const cells = new Map(table.rows.map((row) => [row.line, row.cells]));
  const toggle = ({ line }: PlannedRow) => {
    const next = new Set(leaveOut);
    if (!next.delete(line)) next.add(line);
    onLeaveOut(next);
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
            <Row key={row.line} row={row} cells={cells.get(row.line) ?? []} onToggle={() => toggle(row)} />
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
