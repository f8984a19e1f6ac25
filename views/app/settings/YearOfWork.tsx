import type { YearSpans } from '../../../src/store/settings.ts';
import { monthName } from '../../parts/days.ts';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';

const ROWS: readonly { readonly span: keyof YearSpans; readonly label: string }[] = [
  { span: 'winterOutcome', label: 'Ask for the winter outcome' },
  { span: 'springStrength', label: 'Ask for the strength in spring' },
  { span: 'swarmSeason', label: 'Look for swarm signs' },
  { span: 'miteSeason', label: 'Count mites' },
  { span: 'autumnPreparation', label: 'Prepare for winter' },
];

/** When in the year the rounds ask for what. Places differ; the keeper moves the ends. */
export function YearOfWork() {
  const store = useStore();
  const { yearSpans } = store.settings.value;
  const move = (span: keyof YearSpans, end: 'from' | 'to', monthDay: string) =>
    store.changeSettings({ yearSpans: { ...yearSpans, [span]: { ...yearSpans[span], [end]: monthDay } } });
  return (
    <section class={styles.part}>
      <h2>The year of work</h2>
      <p>
        When the rounds ask for what. Those offered are common practice where winters are cold; move them to
        your own.
      </p>
      {ROWS.map(({ span, label }) => (
        <fieldset key={span} class={styles.span}>
          <legend>{label}</legend>
          <MonthDay
            label={`${label}, from`}
            value={yearSpans[span].from}
            onChange={(day) => move(span, 'from', day)}
          />
          <span>to</span>
          <MonthDay
            label={`${label}, to`}
            value={yearSpans[span].to}
            onChange={(day) => move(span, 'to', day)}
          />
        </fieldset>
      ))}
    </section>
  );
}

interface MonthDayProps {
  readonly label: string;
  /** As 05-14. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

function MonthDay({ label, value, onChange }: MonthDayProps) {
  const [month = '01', day = '01'] = value.split('-');
  const days = new Date(Date.UTC(2001, Number(month), 0)).getUTCDate();
  const set = (nextMonth: string, nextDay: string) => {
    const last = new Date(Date.UTC(2001, Number(nextMonth), 0)).getUTCDate();
    onChange(`${nextMonth}-${String(Math.min(Number(nextDay), last)).padStart(2, '0')}`);
  };
  return (
    <span class={styles.monthDay}>
      <select
        aria-label={`${label}: day`}
        value={day}
        onChange={(event) => set(month, event.currentTarget.value)}
      >
        {Array.from({ length: days }, (_, at) => String(at + 1).padStart(2, '0')).map((each) => (
          <option key={each} value={each}>
            {Number(each)}
          </option>
        ))}
      </select>
      <select
        aria-label={`${label}: month`}
        value={month}
        onChange={(event) => set(event.currentTarget.value, day)}
      >
        {Array.from({ length: 12 }, (_, at) => String(at + 1).padStart(2, '0')).map((each) => (
          <option key={each} value={each}>
            {monthName(Number(each))}
          </option>
        ))}
      </select>
    </span>
  );
}
