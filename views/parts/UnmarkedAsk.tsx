import type { RoughDay } from '../../src/journal/day.ts';
import { newQueenId } from '../../src/journal/new-ids.ts';
import { labelOn, queenTitle } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { anotherFound, markLost, unmarkedSeenIn } from '../../src/registry/unmarked.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from './Button.tsx';
import { Notice } from './Notice.tsx';
import { SavingNotices } from './SavingNotices.tsx';
import styles from './UnmarkedAsk.module.css';
import { unmarkedText } from './unmarked-words.ts';
import { useSaving } from './use-saving.ts';

/** Asks who an unmarked queen was, where a marked one is on record, until one tap answers it. */
export function UnmarkedAsk({ colony }: { readonly colony: Colony }) {
  const store = useStore();
  const saving = useSaving();
  const on = store.on.value;
  const open = unmarkedSeenIn(store.registry.value, colony, on);
  if (!open) return null;
  const { head } = open;
  const label = labelOn(colony, on);
  const another = anotherFound(colony.id, open, newQueenId());
  const same = markLost(colony.id, head.id, on as string as RoughDay);
  return (
    <div class={styles.ask}>
      <Notice title={unmarkedText(open, on)}>
        <p>
          Until you say who she was, it is in doubt whose daughters these workers are. Another queen is taken
          for probably a daughter of {queenTitle(head)}, who then counts as superseded, by deduction.
        </p>
        <div class={styles.answers}>
          <Button
            size="hive"
            wide
            disabled={saving.busy}
            onPress={() => saving.save([another], `${label}: another queen`)}
          >
            Another queen
          </Button>
          <Button
            size="hive"
            wide
            disabled={saving.busy}
            onPress={() => saving.save([same], `${label}: ${queenTitle(head)} lost her mark`)}
          >
            {`${queenTitle(head)} lost her mark`}
          </Button>
        </div>
        <SavingNotices saving={saving} />
      </Notice>
    </div>
  );
}
