import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { Queen } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/Field.tsx';
import { SavingNotices } from '../parts/SavingNotices.tsx';
import { useSaving } from '../parts/use-saving.ts';
import styles from './NameAsk.module.css';

/** Asks for a name where there is none; a name is the keeper's to give, it comes from no box and no dam. */
export function NameAsk({ queen }: { readonly queen: Queen }) {
  const [name, setName] = useState('');
  const saving = useSaving();
  const on = useStore().on.value;
  const taken = namesakes(useRegistry().queens.values(), name);
  const save = (event: Event) => {
    event.preventDefault();
    const given = name.trim();
    if (!given) return;
    const day = on as string as RoughDay;
    void saving.save([{ kind: 'queen-named', day, queen: queen.id, name: given }], `${given} named`);
  };
  return (
    <form class={styles.ask} onSubmit={save}>
      <TextField
        label="She has no name yet"
        value={name}
        onChange={setName}
        hint={
          taken > 0
            ? `${taken === 1 ? 'Another queen is' : `${taken} other queens are`} called so; the records tell them apart, you may not.`
            : 'A name is hers for life. It comes from no box and no dam.'
        }
      />
      <Button type="submit" disabled={saving.busy || name.trim() === ''}>
        Name her
      </Button>
      <SavingNotices saving={saving} />
    </form>
  );
}

function namesakes(queens: Iterable<Queen>, name: string): number {
  const wanted = name.trim().toLocaleLowerCase('en');
  if (!wanted) return 0;
  let count = 0;
  for (const queen of queens) if (queen.name?.toLocaleLowerCase('en') === wanted) count += 1;
  return count;
}
