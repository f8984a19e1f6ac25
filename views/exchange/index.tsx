import { useEffect } from 'preact/hooks';
import { useSearchValue } from '../app/location.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { Disagreements } from './disagreements/Disagreements.tsx';
import styles from './Exchange.module.css';
import { InBox } from './in/InBox.tsx';
import { IncomingPage } from './in/IncomingPage.tsx';
import { opened, takenIn } from './incoming.ts';
import { readLastSaved, savedWords } from './last-saved.ts';
import { Out } from './out/Out.tsx';
import { useFromTop } from './use-from-top.ts';
import { Wipe } from './Wipe.tsx';

/** What leaves the keeper's hands and what comes in, what is new in it, and what is disagreed on. */
export function Exchange(_props: { readonly id?: string }) {
  const { records } = useStore();
  const queen = useSearchValue('queen');
  const incoming = useSearchValue('incoming');
  const open = opened.value;
  if (incoming && open?.records === records.value) return <IncomingPage open={open} />;
  return <Home queen={queen} />;
}

function Home({ queen }: { readonly queen: string | undefined }) {
  const store = useStore();
  useFromTop();
  const entries = [...store.journal.value.values()];
  const disagreements = store.disagreements.value;
  const empty = entries.length === 0;
  const records = store.records.value;
  const out = <Out key={`${records} ${queen ?? ''}`} queen={queen} />;
  return (
    <div class={styles.page}>
      <div class={styles.top}>
        <PageHeader
          title="Exchange"
          lead={
            empty
              ? 'Bring in what you have: a table you kept until now, or a file of records. Nothing is sent anywhere.'
              : `${savedWords(entries, readLastSaved(records))} Nothing is sent anywhere: what leaves is a file that you hand over.`
          }
        />
        <TakenIn />
        {disagreements.length > 0 && (
          <Notice
            title={
              disagreements.length === 1
                ? 'One entry stands in two versions'
                : `${disagreements.length} entries stand in several versions`
            }
          >
            <Button look="quiet" onPress={() => document.getElementById('disagreements')?.scrollIntoView()}>
              Look at what you disagree on
            </Button>
          </Notice>
        )}
      </div>
      <div class={styles.ways}>
        {empty ? (
          <>
            <InBox />
            {out}
          </>
        ) : (
          <>
            {out}
            <InBox />
          </>
        )}
      </div>
      <div class={styles.rest}>
        <Disagreements />
        {!empty && <Wipe />}
      </div>
    </div>
  );
}

/** What was taken in last, until the screen is left. */
function TakenIn() {
  useEffect(
    () => () => {
      takenIn.value = undefined;
    },
    [],
  );
  const words = takenIn.value;
  if (!words) return null;
  return (
    <Notice title="Taken in">
      <p>{words} Undo takes all of it back.</p>
    </Notice>
  );
}
