import { useState } from 'preact/hooks';
import type { RoughDay } from '../../src/journal/day.ts';
import type { LossCause } from '../../src/journal/entries/colony.ts';
import { useStore } from '../app/store-context.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { DayInput } from '../parts/DayInput.tsx';
import { TextArea } from '../parts/Field.tsx';
import { Form } from '../parts/Form.tsx';
import { Notice } from '../parts/Notice.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { useSaving } from '../parts/use-saving.ts';
import { LOSS_CHOICES } from '../parts/words.ts';
import type { ActSheetProps } from './act-sheet.ts';

/** The end of a colony and its cause. Its queen and her line stay on record. */
export function EndSheet({ colony, onClose }: ActSheetProps) {
  const store = useStore();
  const saving = useSaving();
  const [cause, setCause] = useState<LossCause>();
  const [day, setDay] = useState(store.on.value as string as RoughDay);
  const [remark, setRemark] = useState('');
  const [asked, setAsked] = useState(false);
  const save = async () => {
    setAsked(true);
    if (!cause) return;
    const said = remark.trim() ? { remark: remark.trim() } : {};
    const written = await saving.save(
      [{ kind: 'colony-ended', day, colony: colony.id, cause, ...said }],
      `End of ${colony.label}`,
    );
    if (written) onClose();
  };
  return (
    <Sheet title={`${colony.label} has ended`} onClose={onClose}>
      <Form saving={saving} onSubmit={save} submit="Save">
        <ChoiceRow
          label="Cause"
          value={cause}
          onChange={setCause}
          options={LOSS_CHOICES}
          problem={asked && !cause ? 'Choose a cause, or that it is unknown.' : undefined}
        />
        <DayInput label="When, as far as it is known" value={day} onChange={setDay} rough />
        <TextArea label="Remark" value={remark} onChange={setRemark} rows={2} />
        {cause === 'disease' && (
          <Notice tone="warn" title="Brood disease is notifiable in many places">
            Close the hive, move no combs or tools to others, and ask the bee inspector before anything else.
          </Notice>
        )}
      </Form>
    </Sheet>
  );
}
