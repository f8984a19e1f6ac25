import { useId, useState } from 'preact/hooks';
import { addDays, firstDay, isExactDay, PlainDay, RoughDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import { useStore } from '../app/store-context.ts';
import spoken from '../style/spoken.module.css';
import styles from './DayInput.module.css';
import { weekday } from './days.ts';

export interface DayInputProps {
  readonly label: string;
  readonly value: RoughDay;
  readonly onChange: (value: RoughDay) => void;
  /** Allows a month or a year where the keeper knows no better. */
  readonly rough?: boolean;
  readonly hint?: string;
}

type Grain = 'day' | 'month' | 'year';
const LENGTH: Readonly<Record<Grain, number>> = { day: 10, month: 7, year: 4 };

function grainOf(day: RoughDay): Grain {
  return day.length === 10 ? 'day' : day.length === 7 ? 'month' : 'year';
}

/** A day: today and yesterday by one tap, another from the calendar, or only its month or year. */
export function DayInput({ label, value, onChange, rough = false, hint }: DayInputProps) {
  const id = useId();
  const today = useStore().on.value;
  const grain = grainOf(value);
  const pick = (text: string) => {
    const read = RoughDay.safeParse(text);
    if (read.success) onChange(read.data);
  };
  const regrain = (next: Grain) => pick(firstDay(value).slice(0, LENGTH[next]));
  const isNear = value === (today as string) || value === (addDays(today, -1) as string);
  const [other, setOther] = useState(!isNear);
  const near = [
    { day: today, label: 'Today' },
    { day: addDays(today, -1), label: 'Yesterday' },
  ];
  return (
    <fieldset class={styles.days}>
      <legend class={styles.label}>{label}</legend>
      <div class={styles.row}>
        {near.map((each) => (
          <button
            key={each.label}
            type="button"
            class={styles.near}
            aria-pressed={value === (each.day as string)}
            onClick={() => {
              pick(each.day);
              setOther(false);
            }}
          >
            {each.label}
          </button>
        ))}
        {!other && (
          <button type="button" class={styles.near} onClick={() => setOther(true)}>
            Another day
          </button>
        )}
        {other && (
          <span class={styles.other}>
            <label class={spoken.only} for={id}>
              {label}: {grain}
            </label>
            <input
              id={id}
              type={grain === 'year' ? 'number' : grain === 'month' ? 'month' : 'date'}
              min={grain === 'year' ? 1900 : undefined}
              value={value}
              onChange={(event) => pick(event.currentTarget.value)}
            />
          </span>
        )}
        {other && rough && (
          <select
            aria-label="How exactly it is known"
            value={grain}
            onChange={(event) => regrain(event.currentTarget.value as Grain)}
          >
            <option value="day">the day</option>
            <option value="month">only the month</option>
            <option value="year">only the year</option>
          </select>
        )}
      </div>
      <p class={styles.about}>
        {isExactDay(value)
          ? `${weekday(PlainDay.parse(value))}, ${dayText(value)}`
          : `${dayText(value)}, known roughly`}
        {hint && `. ${hint}`}
      </p>
    </fieldset>
  );
}
