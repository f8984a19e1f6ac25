import { useState } from 'preact/hooks';
import type { QueenId } from '../../../src/journal/ids.ts';
import { queenTitle } from '../../../src/registry/queries.ts';
import type { Queen } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { QueenName } from '../../parts/QueenName.tsx';
import { CardOut } from '../card/CardOut.tsx';
import styles from './Out.module.css';
import { PedigreeOut } from './PedigreeOut.tsx';
import { QueenPick } from './QueenPick.tsx';
import { TableOut } from './TableOut.tsx';
import { Tick } from './Tick.tsx';

const FORMS = [
  { value: 'card', label: 'Card' },
  { value: 'records', label: 'File of records' },
  { value: 'table', label: 'Plain table' },
] as const;

/** The pedigree of one queen: as a card to show or print, as a file for another keeper's records, as a table. */
export function OutQueen({ start }: { readonly start: string | undefined }) {
  const { registry } = useStore();
  const [id, setId] = useState(start as QueenId | undefined);
  const queen = id && registry.value.queens.get(id);
  if (!queen) return <QueenPick onPick={(picked) => setId(picked.id)} />;
  return <Pedigree queen={queen} onOther={() => setId(undefined)} />;
}

function Pedigree({ queen, onOther }: { readonly queen: Queen; readonly onOther: () => void }) {
  const [form, setForm] = useState<(typeof FORMS)[number]['value']>('card');
  const [withTraits, setWithTraits] = useState(true);
  const [hideYards, setHideYards] = useState(true);
  const options = { withTraits, hideYards };
  const ticks = (
    <div class={styles.ticks}>
      <Tick value={withTraits} onChange={setWithTraits}>
        With what her colonies did
      </Tick>
      <Tick value={!hideYards} onChange={(named) => setHideYards(!named)}>
        With the names of yards
      </Tick>
    </div>
  );
  return (
    <div class={styles.part}>
      <p class={styles.whose}>
        <span class={styles.name}>
          <QueenName queen={queen} />
        </span>
        <Button look="quiet" onPress={onOther}>
          Another queen
        </Button>
      </p>
      <ChoiceRow
        label="As a"
        required
        value={form}
        onChange={(next) => next && setForm(next)}
        options={FORMS}
      />
      {form === 'card' && (
        <CardOut queen={queen} options={options}>
          {ticks}
        </CardOut>
      )}
      {form === 'records' && (
        <PedigreeOut queen={queen} options={options}>
          {ticks}
        </PedigreeOut>
      )}
      {form === 'table' && <TableOut queen={{ id: queen.id, title: queenTitle(queen) }} />}
    </div>
  );
}
