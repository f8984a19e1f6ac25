import { useState } from 'preact/hooks';
import type { IntakePlan } from '../../../src/exchange/intake/index.ts';
import type { Problem } from '../../../src/journal/problems.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { TextField } from '../../parts/Field.tsx';
import { FormActions } from '../../parts/FormActions.tsx';
import { counted } from '../counted.ts';
import { ProblemList } from '../in/ProblemList.tsx';
import { countStatus, draftsSentence } from './plan-words.ts';
import styles from './Table.module.css';

export interface AcceptTableProps {
  readonly name: string;
  readonly plan: IntakePlan;
  /** An answer is being worked in: what would be written is not yet what is shown. */
  readonly busy: boolean;
  readonly onAway: () => void;
  readonly onTaken: (words: string) => void;
}

/** Takes in every good row as one action, or puts the table away. */
export function AcceptTable({ name, plan, busy: reading, onAway, onTaken }: AcceptTableProps) {
  const store = useStore();
  const [keeper, setKeeper] = useState('');
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const counts = countStatus(plan.rows);
  const good = counts.ready + counts.partly;
  const can = plan.drafts.length > 0 && plan.problems.length === 0;
  const nameless = store.keeper.value.name === '';

  const take = async () => {
    setAsked(true);
    if (nameless && keeper.trim() === '') return;
    setBusy(true);
    if (nameless) await store.nameKeeper(keeper.trim());
    const written = await store.write(plan.drafts, `${name}: ${counted(good, 'row')}`);
    setBusy(false);
    if (!written.ok) return setProblems(written.problems);
    onTaken(`${counted(good, 'row')} of ${name}: ${draftsSentence(plan)}.`);
  };

  return (
    <div class={styles.accept}>
      {can && nameless && (
        <TextField
          label="Your name"
          value={keeper}
          onChange={setKeeper}
          hint="It stands beside what you write, for the day you put your records together with another keeper's."
          problem={asked && keeper.trim() === '' ? 'Write a name; initials will do.' : undefined}
        />
      )}
      <ProblemList problems={problems} />
      <FormActions>
        {can && (
          <Button look="main" size="hive" disabled={busy || reading} onPress={take}>
            Take in {counted(good, 'row')}
          </Button>
        )}
        <Button size="hive" onPress={onAway}>
          Put the table away
        </Button>
      </FormActions>
    </div>
  );
}
