import { useState } from 'preact/hooks';
import { problemText } from '../../src/journal/problems.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { NumberStepper } from '../parts/NumberStepper.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { sentence } from '../parts/words.ts';
import type { TreatmentSheetProps } from './TakeOutSheet.tsx';

/** The wait before honey, read off the label by the keeper; it corrects the entry of the treatment. */
export function HoneyWaitSheet({ span, onClose }: TreatmentSheetProps) {
  const store = useStore();
  const [days, setDays] = useState<number | undefined>(span.entry.honeyWaitDays);
  const [trouble, setTrouble] = useState<string>();
  const save = async () => {
    if (days === undefined) return;
    const {
      id,
      action: _action,
      recordedAt: _at,
      recordedBy: _by,
      supersedes: _before,
      ...said
    } = span.entry;
    const written = await store.correct(id, { ...said, honeyWaitDays: days });
    if (written.ok) onClose();
    else setTrouble(written.problems.map(problemText).join(' '));
  };
  return (
    <Sheet title={`Wait before honey: ${sentence(span.entry.active)}`} onClose={onClose}>
      <p>
        The days that the label of the product asks for between the end of the treatment and taking honey. The
        label decides; this app knows none of them.
      </p>
      <NumberStepper label="Wait" unit="(days, from the label)" max={400} value={days} onChange={setDays} />
      {trouble && <Notice tone="warn">{trouble}</Notice>}
      <Button look="main" size="hive" disabled={days === undefined} onPress={save}>
        Save the wait
      </Button>
    </Sheet>
  );
}
