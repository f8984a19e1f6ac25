import { useMemo, useState } from 'preact/hooks';
import { journalFileName } from '../../../src/exchange/journal-file/index.ts';
import { useStore } from '../../app/store-context.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { counted } from '../counted.ts';
import { keepLastSaved, markOf } from '../last-saved.ts';
import { Line, Manifest } from '../Manifest.tsx';
import { manifestOf, sizeText } from '../manifest.ts';
import { estimateBytes, journalFile } from './files.ts';
import styles from './Out.module.css';
import { ReadEntries } from './ReadEntries.tsx';
import { NameAsk, SaveFile } from './SaveFile.tsx';
import { TableOut } from './TableOut.tsx';
import { Tick } from './Tick.tsx';
import { usePhotos } from './use-photos.ts';

const FORMS = [
  { value: 'records', label: 'File of records' },
  { value: 'table', label: 'Plain table' },
] as const;

/** Everything: as the file that is backup and means of exchange, or the pedigree of all queens as a table. */
export function OutAll() {
  const [form, setForm] = useState<'records' | 'table'>('records');
  return (
    <div class={styles.part}>
      <ChoiceRow
        label="As a"
        required
        value={form}
        onChange={(next) => next && setForm(next)}
        options={FORMS}
      />
      {form === 'records' ? <WholeJournal /> : <TableOut />}
    </div>
  );
}

function WholeJournal() {
  const store = useStore();
  const journal = store.journal.value;
  const registry = store.registry.value;
  const photos = usePhotos();
  const [withPhotos, setWithPhotos] = useState(true);
  const entries = useMemo(() => [...journal.values()], [journal]);
  const facts = useMemo(() => manifestOf(entries, registry), [entries, registry]);
  const sent = withPhotos ? (photos?.all ?? []) : [];
  const exported = new Date().toISOString();
  const bytes = estimateBytes(entries) + (withPhotos ? ((photos?.bytes ?? 0) * 4) / 3 : 0);
  const make = () => {
    const at = new Date().toISOString();
    const by = store.keeper.value;
    keepLastSaved(store.records.value, { at, mark: markOf(entries) });
    return journalFile({ exported: at, by, scope: { of: 'all' }, entries, photos: sent });
  };
  const hasPhotos = photos !== undefined && photos.all.length > 0;
  return (
    <>
      <p class={styles.note}>
        Every entry with its corrections, also what was taken back. Brought in on another device or by another
        keeper it is put together with what is there; nothing is lost on either side. Keep a copy away from
        this device.
      </p>
      {hasPhotos && (
        <Tick value={withPhotos} onChange={setWithPhotos}>
          With {counted(photos.all.length, 'photograph')}, {sizeText(photos.bytes)}
        </Tick>
      )}
      <Manifest facts={facts}>
        <Line title="Photographs">
          {!hasPhotos
            ? 'none on this device'
            : withPhotos
              ? photos.all.length
              : `none; ${photos.all.length} stay here`}
        </Line>
      </Manifest>
      <ReadEntries entries={entries} />
      <NameAsk />
      <SaveFile
        name={journalFileName({ scope: { of: 'all' }, exported })}
        bytes={bytes}
        make={make}
        disabled={photos === undefined}
      />
    </>
  );
}
