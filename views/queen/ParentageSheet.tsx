import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { Evidence } from '../../src/journal/entry-parts.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import { useStore } from '../app/store-context.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { Form } from '../parts/Form.tsx';
import { QueenSelect } from '../parts/QueenSelect.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import { EVIDENCE, sentence } from '../parts/words.ts';
import { parentageFor, SURENESS, type Sureness, surenessOf } from './parentage-choice.ts';
import type { QueenSheetProps } from './queen-sheet.ts';

const HOW_KNOWN: readonly Evidence[] = [
  'eggs-named',
  'dam-in-colony',
  'unmarked-queen-found',
  'old-record',
  'told',
  'marker-test',
];

/** Her dam, as far as the keeper knows: one queen, how sure, a second one where it lies between two, or nobody known. */
export function ParentageSheet({ queen, onClose }: QueenSheetProps) {
  const on = useStore().on.value;
  const saving = useSaving();
  const known = [...(queen.parentage?.dams ?? [])].sort((a, b) => b.probability - a.probability);
  const [dam, setDam] = useState<QueenId | undefined>(known[0]?.queen);
  const [other, setOther] = useState<QueenId | undefined>(known[1]?.queen);
  const [sure, setSure] = useState<Sureness | undefined>(surenessOf(known[0]?.probability));
  const [evidence, setEvidence] = useState<Evidence | undefined>(queen.parentage?.evidence);
  const [asked, setAsked] = useState(false);
  const missing = dam !== undefined && sure === undefined;
  const save = async () => {
    setAsked(true);
    if (missing || !evidence) return;
    const parentage = parentageFor({
      dam,
      other: sure === 'certain' ? undefined : other,
      sure,
      recorded: dam === known[0]?.queen ? known[0]?.probability : undefined,
      evidence,
    });
    const draft = {
      kind: 'parentage-stated' as const,
      day: on as string as RoughDay,
      queen: queen.id,
      parentage,
    };
    if (await saving.save([draft], `Dam of ${queenTitle(queen)}`)) onClose();
  };
  return (
    <Sheet title={`The dam of ${queenTitle(queen)}`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <QueenSelect label="Her dam" value={dam} onChange={setDam} without={[queen.id]} none="Not known" />
        {dam && (
          <ChoiceRow
            label="How sure"
            required
            options={SURENESS}
            value={sure}
            onChange={setSure}
            problem={asked && missing ? 'Say how sure it is.' : undefined}
          />
        )}
        {dam && sure && sure !== 'certain' && (
          <QueenSelect
            label="If not her, then"
            value={other}
            onChange={setOther}
            without={[queen.id, dam]}
            none="A queen not on record"
          />
        )}
        <ChoiceRow
          label="How it is known"
          options={HOW_KNOWN.map((value) => ({ value, label: sentence(EVIDENCE[value]) }))}
          value={evidence}
          onChange={setEvidence}
          problem={asked && !evidence ? 'Choose how it is known.' : undefined}
        />
      </Form>
    </Sheet>
  );
}
