import { useMemo } from 'preact/hooks';
import { readTable, type TableRow } from '../../../src/exchange/intake/index.ts';
import type { QueenId } from '../../../src/journal/ids.ts';
import { useStore } from '../../app/store-context.ts';
import { useToday } from '../../parts/use-today.ts';
import { list } from '../../parts/words.ts';
import { counted } from '../counted.ts';
import { tableFiles } from './files.ts';
import styles from './Out.module.css';
import { SaveFile } from './SaveFile.tsx';

/** Rows of the table that are shown before it is saved: the fullest, in their order. */
const SHOWN_ROWS = 5;

export interface TableOutProps {
  /** Only this queen with her ancestors. */
  readonly queen?: { readonly id: QueenId; readonly title: string };
}

/** The pedigree as a plain table for a spreadsheet or a program of statistics, with its first rows in sight. */
export function TableOut({ queen }: TableOutProps) {
  const registry = useStore().registry.value;
  const day = useToday();
  const files = useMemo(() => tableFiles(registry, day, queen), [registry, day, queen?.id]);
  return (
    <>
      <p class={styles.note}>
        {queen ? `${queen.title} and her ancestors` : 'Every queen'} with her possible dams, the mothers of
        the drones she met, and the stock behind them: {counted(files.count, 'row')}, one a queen. No days, no
        boxes, no records of traits.{' '}
        {files.yards.length > 0 && `Drone pools are named after ${list(files.yards)}.`}
      </p>
      <FirstRows text={files.queens.text} total={files.count} />
      <SaveFile
        name={files.queens.name}
        bytes={files.queens.text.length}
        make={() => files.queens}
        beside={files.pools}
      />
    </>
  );
}

function FirstRows({ text, total }: { readonly text: string; readonly total: number }) {
  const table = useMemo(() => readTable(text), [text]);
  const full = (row: TableRow) => row.cells.filter((cell) => cell !== '').length;
  const rows = [...table.rows]
    .sort((a, b) => full(b) - full(a) || a.line - b.line)
    .slice(0, SHOWN_ROWS)
    .sort((a, b) => a.line - b.line);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a keyboard must be able to scroll the table sideways.
    <section class={styles.table} tabIndex={0} aria-label="Some rows of the table">
      <table>
        <caption>
          {rows.length < total ? `${rows.length} of its ${total} rows` : counted(total, 'row')}
        </caption>
        <thead>
          <tr>
            {table.header.map((name) => (
              <th key={name} scope="col">
                {name.replaceAll('_', ' ')}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ line, cells }) => (
            <tr key={line}>
              {cells.map((cell, column) => (
                <td key={table.header[column]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
