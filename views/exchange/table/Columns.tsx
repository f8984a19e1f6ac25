import { type ColumnMapping, FIELD_NAMES, FIELDS, type Field } from '../../../src/exchange/intake/index.ts';
import { columnLetter } from '../../../src/exchange/intake/row.ts';
import { winterYears } from '../../../src/journal/day-words.ts';
import styles from './Columns.module.css';

/** A guess below this is pointed out. */
const SURE = 0.6;

export interface ColumnsProps {
  readonly mapping: readonly ColumnMapping[];
  readonly onChange: (mapping: readonly ColumnMapping[]) => void;
}

/** Every column with some of its values and what it is taken to hold, for the keeper to change. */
export function Columns({ mapping, onChange }: ColumnsProps) {
  const change = (column: number, field: Field) =>
    onChange(
      mapping.map((each) =>
        each.column === column ? { ...each, field, confidence: 1, because: 'You said so.' } : each,
      ),
    );
  return (
    <ul class={styles.columns}>
      {mapping.map((each) => (
        <Column key={each.column} column={each} onChange={(field) => change(each.column, field)} />
      ))}
    </ul>
  );
}

function Column({
  column,
  onChange,
}: {
  readonly column: ColumnMapping;
  readonly onChange: (field: Field) => void;
}) {
  const letter = columnLetter(column.column);
  const id = `column-${column.column}`;
  const facts = FIELDS[column.field];
  const unsure = column.confidence < SURE;
  const out = column.field === 'ignore';
  return (
    <li class={`${styles.column} ${out ? styles.out : ''}`}>
      <label class={styles.head} for={id}>
        <span class={styles.letter}>{letter}</span>
        {column.header || <em>no name</em>}
      </label>
      <p class={styles.samples}>{column.samples.length > 0 ? column.samples.join(' · ') : 'empty'}</p>
      <div class={styles.meaning}>
        <select
          id={id}
          value={column.field}
          aria-describedby={`${id}-why`}
          onChange={(event) => onChange(event.currentTarget.value as Field)}
        >
          {FIELD_NAMES.map((field) => (
            <option key={field} value={field}>
              {FIELDS[field].title}
              {field === 'winter' && column.field === 'winter' && column.year !== undefined
                ? ` ${winterYears(column.year)}`
                : ''}
            </option>
          ))}
        </select>
        <p id={`${id}-why`} class={unsure ? styles.unsure : styles.why}>
          {unsure ? `Please check. ${column.because}` : facts.hint}
        </p>
      </div>
    </li>
  );
}
