import type { ComponentType } from 'preact';
import { headOn } from '../../../src/registry/queries.ts';
import { useStore } from '../../app/store-context.ts';
import { expectedQueens } from '../../parts/awaited.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { useKept } from '../../parts/use-kept.ts';
import type { RecordFormProps } from '../index.tsx';
import { AnotherFound } from './AnotherFound.tsx';
import { BroughtIn } from './BroughtIn.tsx';
import { CellsFound } from './CellsFound.tsx';
import { Introduced } from './Introduced.tsx';
import { Lays } from './Lays.tsx';
import { Lost } from './Lost.tsx';
import { Marked } from './Marked.tsx';
import { Named } from './Named.tsx';
import styles from './QueenForm.module.css';
import type { QueenEvent, QueenEventProps, Told } from './told.ts';

interface EventChoice {
  readonly value: QueenEvent;
  readonly label: string;
}

const FORMS: Readonly<Record<QueenEvent, ComponentType<QueenEventProps>>> = {
  lays: Lays,
  marked: Marked,
  named: Named,
  lost: Lost,
  another: AnotherFound,
  introduced: Introduced,
  'brought-in': BroughtIn,
  cells: CellsFound,
};

/** What happened to the queen of this hive: only what can have happened is offered. */
export function QueenForm({ colony }: RecordFormProps) {
  const { registry, on } = useStore();
  const head = headOn(registry.value, colony, on.value);
  const coming = expectedQueens(colony, registry.value);
  const choices = offered(head !== undefined, coming.length > 0);
  const begun: Told = !head && coming.length > 0 ? { event: 'lays' } : {};
  const kept = useKept<Told>(`queen ${colony.id}`, begun);
  const told = kept.value;
  const event = choices.find(({ value }) => value === told.event)?.value;
  const Form = event && FORMS[event];
  return (
    <div class={styles.form}>
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <ChoiceRow
        label="What happened"
        size="hive"
        options={choices}
        value={event}
        onChange={(event) => kept.set({ event })}
      />
      {Form && (
        <Form
          key={event}
          colony={colony}
          queens={[...(head ? [head] : []), ...coming]}
          told={told}
          tell={(change) => kept.set((told) => ({ ...told, ...change }))}
          onSaved={kept.forget}
        />
      )}
    </div>
  );
}

function offered(head: boolean, coming: boolean): readonly EventChoice[] {
  const all: readonly (EventChoice & { readonly when: boolean })[] = [
    { value: 'lays', label: 'She lays', when: coming },
    { value: 'marked', label: 'Marked', when: head || coming },
    { value: 'named', label: 'Named', when: head || coming },
    { value: 'another', label: 'Another queen found', when: head || coming },
    { value: 'lost', label: 'Lost or given away', when: head || coming },
    { value: 'cells', label: 'Cells found', when: true },
    { value: 'introduced', label: 'A queen put in', when: true },
    { value: 'brought-in', label: 'A queen not on record', when: !head },
  ];
  return all.filter(({ when }) => when);
}
