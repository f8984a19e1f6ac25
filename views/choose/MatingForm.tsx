import type { QueenId } from '../../src/journal/ids.ts';
import { CheckList } from '../parts/CheckList.tsx';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import { Count } from './Count.tsx';
import styles from './MatingForm.module.css';
import type { MatingQuestion } from './mating.ts';
import type { Choice } from './use-choice.ts';

export interface MatingFormProps {
  readonly choice: Choice;
  readonly question: MatingQuestion;
  readonly onChange: (question: MatingQuestion) => void;
}

/** Whose daughter, and which drones. */
export function MatingForm({ choice, question, onChange }: MatingFormProps) {
  const queens = choice.ranking.rows.map(({ id }) => ({ value: id, label: choice.nameOf(id) }));
  return (
    <div class={styles.form}>
      <SelectField
        label="A daughter of"
        value={question.dam}
        options={queens}
        onChange={(dam) => dam && onChange({ ...question, dam })}
      />
      <ChoiceRow
        label="She meets her drones"
        required
        value={question.manner}
        options={[
          { value: 'yard', label: 'flying at a yard' },
          { value: 'inseminated', label: 'by insemination' },
        ]}
        onChange={(manner) => manner && onChange({ ...question, manner })}
      />
      {question.manner === 'yard' ? (
        <YardFields choice={choice} question={question} onChange={onChange} queens={queens} />
      ) : (
        <DonorFields question={question} onChange={onChange} queens={queens} />
      )}
    </div>
  );
}

type Queens = readonly { readonly value: QueenId; readonly label: string }[];

function YardFields({ choice, question, onChange, queens }: MatingFormProps & { readonly queens: Queens }) {
  const yards = choice.evaluated.work.yards.map(({ yard }) => ({
    value: yard,
    label: choice.yardName(yard),
  }));
  return (
    <>
      <SelectField
        label="Yard"
        value={question.yard}
        options={yards}
        onChange={(yard) => onChange({ ...question, yard })}
      />
      <CheckList
        label="Drone colonies moved there"
        options={queens}
        value={question.movedIn}
        hint="Their queens. Moving colonies may need a health certificate: ask the bee inspector."
        onChange={(movedIn) => onChange({ ...question, movedIn })}
      />
      {question.movedIn.length > 0 && (
        <Count
          label="Share of the drones that they then make"
          unit="%"
          value={Math.round(100 * question.movedShare)}
          min={0}
          max={100}
          step={5}
          onChange={(share = 50) => onChange({ ...question, movedShare: share / 100 })}
        />
      )}
    </>
  );
}

function DonorFields({
  question,
  onChange,
  queens,
}: Omit<MatingFormProps, 'choice'> & { readonly queens: Queens }) {
  return (
    <>
      <CheckList
        label="Drones of"
        options={queens}
        value={question.donors}
        hint="Several give equal parts of the semen."
        onChange={(donors) => onChange({ ...question, donors })}
      />
      <label class={styles.tick}>
        <input
          type="checkbox"
          checked={question.singleDrone}
          onChange={() => onChange({ ...question, singleDrone: !question.singleDrone })}
        />
        The semen of one drone alone
      </label>
    </>
  );
}
