import { useState } from 'preact/hooks';
import type { Entry } from '../../../src/journal/entry.ts';
import { problemText } from '../../../src/journal/problems.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { TextField } from '../../parts/Field.tsx';
import { Notice } from '../../parts/Notice.tsx';
import styles from './Entry.module.css';

export interface TakeBackProps {
  readonly entry: Entry;
  readonly withdrawal: Entry | undefined;
}

/** Takes an entry back, with a reason if the keeper gives one, or brings it back. It stays readable either way. */
export function TakeBack({ entry, withdrawal }: TakeBackProps) {
  const store = useStore();
  const [reason, setReason] = useState('');
  const [trouble, setTrouble] = useState<string>();
  const act = async (ids: readonly Entry['id'][], why?: string) => {
    const written = await store.withdraw(ids, why);
    setTrouble(written.ok ? undefined : written.problems.map(problemText).join(' '));
  };
  if (withdrawal) {
    const why = withdrawal.kind === 'withdrawal' ? withdrawal.reason : undefined;
    return (
      <div class={styles.acts}>
        <p>Taken back{why ? `: ${why}` : ''}. It no longer counts.</p>
        <Button onPress={() => act([withdrawal.id], 'Brought back')}>Bring it back</Button>
        {trouble && <Notice tone="warn">{trouble}</Notice>}
      </div>
    );
  }
  return (
    <div class={styles.takeBack}>
      <TextField label="Why take it back" value={reason} onChange={setReason} hint="May stay empty." />
      <Button onPress={() => act([entry.id], reason.trim() || undefined)}>Take it back</Button>
      {trouble && <Notice tone="warn">{trouble}</Notice>}
    </div>
  );
}
