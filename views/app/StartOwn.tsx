import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import { newYardId } from '../../src/journal/new-ids.ts';
import { problemText } from '../../src/journal/problems.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/Field.tsx';
import { Notice } from '../parts/Notice.tsx';
import { go, routes } from './routes.ts';
import styles from './StartOwn.module.css';
import { useStore } from './store-context.ts';

/** The first two facts of a keeper's own records: who writes, and the first yard. */
export function StartOwn({ onBack }: { readonly onBack: () => void }) {
  const store = useStore();
  const [name, setName] = useState(store.keeper.value.name);
  const [yard, setYard] = useState('');
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [asked, setAsked] = useState(false);
  const missing = { name: name.trim() === '', yard: yard.trim() === '' };

  const start = async (event: Event) => {
    event.preventDefault();
    setAsked(true);
    if (missing.name || missing.yard) return;
    const id = newYardId();
    const day = store.on.value as string as RoughDay;
    await store.nameKeeper(name.trim());
    const written = await store.write(
      [{ kind: 'yard-opened', day, yard: id, name: yard.trim() }],
      `Yard ${yard.trim()}`,
    );
    if (written.ok) go(routes.yard(id));
    else setProblems(written.problems.map(problemText));
  };

  return (
    <form class={styles.start} onSubmit={start} noValidate>
      <TextField
        label="Your name"
        value={name}
        onChange={setName}
        hint="It stands beside what you write, for the day you put your records together with another keeper's."
        problem={asked && missing.name ? 'Write a name; initials will do.' : undefined}
      />
      <TextField
        label="Your first yard"
        value={yard}
        onChange={setYard}
        hint="What you call the place where the colonies stand."
        problem={asked && missing.yard ? 'Give the yard a name.' : undefined}
      />
      {problems.map((text) => (
        <Notice key={text} tone="warn">
          {text}
        </Notice>
      ))}
      <div class={styles.actions}>
        <Button type="submit" look="main" size="hive">
          Open the yard
        </Button>
        <Button look="quiet" onPress={onBack}>
          Back
        </Button>
      </div>
    </form>
  );
}
