import type { Table } from '../../../src/exchange/intake/index.ts';
import { routes } from '../../app/routes.ts';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { counted } from '../counted.ts';
import { ProblemList } from '../in/ProblemList.tsx';
import type { TableWork } from '../incoming.ts';
import { AcceptTable } from './AcceptTable.tsx';
import { Columns } from './Columns.tsx';
import { delimiterWords } from './plan-words.ts';
import { Questions } from './Questions.tsx';
import { Rows } from './Rows.tsx';
import styles from './Table.module.css';
import { type ReadPlan, usePlan } from './use-plan.ts';

export interface TableIntakeProps {
  readonly name: string;
  readonly table: Table;
  readonly work: TableWork;
  readonly onWork: (work: TableWork) => void;
  readonly onAway: () => void;
  readonly onTaken: (words: string) => void;
}

/** A keeper's table, on one page: what its columns mean, what is open, what each row would write, and taking it in. */
export function TableIntake({ name, table, work, onWork, onAway, onTaken }: TableIntakeProps) {
  const read = usePlan(table, work);
  const columns = work.mapping.length;
  return (
    <>
      <PageHeader
        title={name}
        above={{ label: 'Exchange', href: routes.exchange() }}
        lead={`A table of ${counted(table.rows.length, 'row')} and ${counted(columns, 'column')}, divided by ${delimiterWords(table.delimiter)}. Nothing is written before you take it in.`}
      />
      <div class={styles.page} aria-busy={read?.busy ?? true}>
        {read ? (
          <Planned name={name} read={read} work={work} onWork={onWork} onAway={onAway} onTaken={onTaken} />
        ) : (
          <p role="status">Reading {counted(table.rows.length, 'row')}.</p>
        )}
      </div>
    </>
  );
}

interface PlannedProps extends Omit<TableIntakeProps, 'table'> {
  readonly read: ReadPlan & { readonly busy: boolean };
}

function Planned({ name, read, work, onWork, onAway, onTaken }: PlannedProps) {
  const { table, plan, busy } = read;
  const { questions } = plan;
  return (
    <>
      <ProblemList problems={plan.problems} />
      {work.mapping.length > 0 && (
        <section class={styles.step} aria-labelledby="columns">
          <h2 id="columns">1. What the columns mean</h2>
          <Columns mapping={work.mapping} onChange={(mapping) => onWork({ ...work, mapping })} />
        </section>
      )}
      {questions.length > 0 && (
        <section class={styles.step} aria-labelledby="questions">
          <h2 id="questions">2. What only you can say</h2>
          <Questions
            questions={questions}
            answers={work.answers}
            onChange={(answers) => onWork({ ...work, answers })}
          />
        </section>
      )}
      {table.rows.length > 0 && plan.problems.length === 0 && (
        <section class={styles.step} aria-labelledby="rows">
          <h2 id="rows">{questions.length > 0 ? '3' : '2'}. What each row would write</h2>
          <Rows table={table} plan={plan} work={work} onWork={onWork} />
        </section>
      )}
      <AcceptTable name={name} plan={plan} busy={busy} onAway={onAway} onTaken={onTaken} />
    </>
  );
}
