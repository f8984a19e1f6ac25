import { useId } from 'preact/hooks';
import { type Answers, answerTo, type Question } from '../../../src/exchange/intake/index.ts';
import { plainDays } from '../../parts/days.ts';
import { Field } from '../../parts/Field.tsx';

import styles from './Questions.module.css';

export interface QuestionsProps {
  readonly questions: readonly Question[];
  readonly answers: Answers;
  readonly onChange: (answers: Answers) => void;
}

/** What the table leaves open. A guess is taken until the keeper answers; where there is none, the cells wait as notes. */
export function Questions({ questions, answers, onChange }: QuestionsProps) {
  const answer = (question: Question, value: string) => onChange({ ...answers, [question.id]: value });
  return (
    <ol class={styles.questions}>
      {questions.map((question) => (
        <li key={question.id}>
          {question.options.length > 0 ? (
            <Options
              question={question}
              value={answerTo(question, answers)}
              given={question.id in answers}
              onChange={(value) => answer(question, value)}
            />
          ) : (
            <FreeAnswer
              question={question}
              value={answerTo(question, answers) ?? ''}
              onChange={(value) => answer(question, value)}
            />
          )}
        </li>
      ))}
    </ol>
  );
}

interface OptionsProps {
  readonly question: Question;
  readonly value: string | undefined;
  readonly given: boolean;
  readonly onChange: (value: string) => void;
}

function Options({ question, value, given, onChange }: OptionsProps) {
  const name = useId();
  return (
    <fieldset class={styles.options}>
      <legend>{plainDays(question.text)}</legend>
      {question.options.map((option) => (
        <label key={option.value}>
          <input
            type="radio"
            name={name}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          <span>
            {plainDays(option.words)}
            {!given && option.value === question.guess && (
              <small class={styles.guess}>taken until you say</small>
            )}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

const HINTS = {
  day: 'A day, a month or a year: 14.5.2024, May 2024, 2024.',
  year: 'A year, such as 2024.',
  text: undefined,
} as const;

function FreeAnswer({
  question,
  value,
  onChange,
}: Omit<OptionsProps, 'given' | 'value'> & { readonly value: string }) {
  return (
    <Field label={question.text} hint={question.free && HINTS[question.free]}>
      {({ id, describedBy }) => (
        <input
          id={id}
          type="text"
          autocomplete="off"
          aria-describedby={describedBy}
          value={value}
          onChange={(event) => onChange(event.currentTarget.value)}
        />
      )}
    </Field>
  );
}
