import { useMemo } from 'preact/hooks';
import type { JournalFile } from '../../../src/exchange/journal-file/index.ts';
import type { RoughDay } from '../../../src/journal/day.ts';
import { dayText } from '../../../src/journal/day-words.ts';
import { routes } from '../../app/routes.ts';
import { StoreContext, useStore } from '../../app/store-context.ts';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { PlainNames } from '../../parts/plain-names.ts';
import { PedigreeCard } from '../card/PedigreeCard.tsx';
import { Line, Manifest } from '../Manifest.tsx';
import { manifestOf } from '../manifest.ts';
import { AlteredEntries } from './AlteredEntries.tsx';
import styles from './Incoming.module.css';
import { NewConflicts } from './NewConflicts.tsx';
import { NewContradictions } from './NewContradictions.tsx';
import { NewEntries } from './NewEntries.tsx';
import type { Incoming } from './read-incoming.ts';
import { TakeIn } from './TakeIn.tsx';
import { type PreviewedUnion, useUnion } from './union.ts';
import { ownWords, unionWords } from './union-words.ts';
import { useNewPhotos } from './use-new-photos.ts';

export interface JournalIntakeProps {
  readonly incoming: Extract<Incoming, { readonly is: 'journal' }>;
  readonly onAway: () => void;
  readonly onTaken: (words: string) => void;
}

/** A file of records against ours: what is new, the same, differing and disagreed on; then taken in as one. */
export function JournalIntake({ incoming, onAway, onTaken }: JournalIntakeProps) {
  const store = useStore();
  const { file, name, text } = incoming;
  const union = useUnion(file.entries);
  const photos = useNewPhotos(file.photos);
  const fresh = union.preview.added.length;
  const mine = file.by.id === store.keeper.value.id;
  const own = mine
    ? 0
    : union.preview.added.filter(({ recordedBy }) => recordedBy === store.keeper.value.id).length;
  const of = file.scope.of === 'queen' ? `the pedigree of ${file.scope.name}` : 'records';
  const by = file.by.name || 'a keeper without a name';

  return (
    <>
      <PageHeader
        title={mine ? 'Your own records' : `From ${by}`}
        above={{ label: 'Exchange', href: routes.exchange() }}
        lead={[unionWords(union, photos.length), ownWords(own, fresh)].filter(Boolean).join(' ')}
      />
      <p class={styles.file}>
        {name}: {of}, saved {dayText(file.exported.slice(0, 10) as RoughDay)}. Nothing is written yet.
      </p>
      <StoreContext.Provider value={union.after}>
        <PlainNames.Provider value={true}>
          <div class={styles.columns}>
            <div class={styles.page}>
              <ToldQueen file={file} union={union} />
              <AlteredEntries altered={union.altered} text={text} name={name} />
              <NewConflicts disagreements={union.preview.disagreements} />
              <NewContradictions contradictions={union.preview.contradictions} />
            </div>
            <div class={styles.side}>
              {fresh > 0 && <Fresh union={union} photos={photos.length} />}
              <TakeIn file={file} union={union} photos={photos} onAway={onAway} onTaken={onTaken} />
            </div>
            {fresh > 0 && (
              <section class={styles.part} aria-labelledby="each">
                <h2 id="each">Each new entry</h2>
                <NewEntries entries={union.preview.added} />
              </section>
            )}
          </div>
        </PlainNames.Provider>
      </StoreContext.Provider>
    </>
  );
}

function Fresh({ union, photos }: { readonly union: PreviewedUnion; readonly photos: number }) {
  const { added } = union.preview;
  const facts = useMemo(() => manifestOf(added, union.after.registry.value), [union]);
  return (
    <section class={styles.part} aria-labelledby="fresh">
      <h2 id="fresh">New to you</h2>
      <Manifest facts={facts}>{photos > 0 && <Line title="Photographs">{photos}</Line>}</Manifest>
    </section>
  );
}

/** Of a pedigree: who the queen is and where she comes from, as the records would tell it afterwards. */
function ToldQueen({ file, union }: { readonly file: JournalFile; readonly union: PreviewedUnion }) {
  const { scope, by } = file;
  const queen = scope.of === 'queen' ? union.after.registry.value.queens.get(scope.queen) : undefined;
  if (!queen) return null;
  return <PedigreeCard queen={queen} withTraits={false} hideYards teller={by.name} />;
}
