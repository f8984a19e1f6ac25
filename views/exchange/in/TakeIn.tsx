import { useState } from 'preact/hooks';
import type { JournalFile, Photo } from '../../../src/exchange/journal-file/index.ts';
import type { Problem } from '../../../src/journal/problems.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { FormActions } from '../../parts/FormActions.tsx';
import { counted } from '../counted.ts';
import { ProblemList } from './ProblemList.tsx';
import type { PreviewedUnion } from './union.ts';
import { WhoseRecords } from './WhoseRecords.tsx';
import { whoseFile } from './whose.ts';

export interface TakeInProps {
  readonly file: JournalFile;
  readonly union: PreviewedUnion;
  readonly photos: readonly Photo[];
  readonly onAway: () => void;
  readonly onTaken: (words: string) => void;
}

/** Asks whose records the file holds where that is open, and takes in what is new, or puts the file away. */
export function TakeIn({ file, union, photos, onAway, onTaken }: TakeInProps) {
  const store = useStore();
  const { by } = file;
  const told = whoseFile(file, store.keeper.value, store.journal.value, store.records.value);
  const [said, setSaid] = useState<'mine' | 'theirs'>();
  const [pressed, setPressed] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [busy, setBusy] = useState(false);
  const fresh = union.preview.added.length;
  const goesOn = told === 'ask' && said === 'mine';
  const nothing = fresh === 0 && photos.length === 0 && !goesOn;
  const name = by.name || 'a keeper without a name';

  const take = async () => {
    setPressed(true);
    if (told === 'ask' && said === undefined) return;
    setBusy(true);
    const united = await store.unite(union.entries, photos, goesOn ? by.id : undefined);
    setBusy(false);
    if (!united.ok) return setProblems(united.problems);
    const count = counted(fresh, 'entry', 'entries');
    onTaken(goesOn ? `${count}. You go on writing as ${name}.` : `${count} from ${name}.`);
  };

  return (
    <>
      {told === 'ask' && (
        <WhoseRecords
          name={by.name}
          value={said}
          onChange={setSaid}
          problem={
            pressed && said === undefined
              ? 'Say whose records these are: what you write later bears that name.'
              : undefined
          }
        />
      )}
      <ProblemList problems={problems} />
      <FormActions>
        {!nothing && (
          <Button look="main" size="hive" disabled={busy} onPress={take}>
            {fresh > 0
              ? `Take in ${counted(fresh, 'entry', 'entries')}`
              : photos.length > 0
                ? `Take in ${counted(photos.length, 'photograph')}`
                : `Go on as ${name}`}
          </Button>
        )}
        <Button size="hive" look={nothing ? 'main' : 'plain'} onPress={onAway}>
          Put the file away
        </Button>
      </FormActions>
    </>
  );
}
