import { useState } from 'preact/hooks';
import { newEntryId } from '../../../src/journal/new-ids.ts';
import { Button } from '../../parts/Button.tsx';
import { CheckList } from '../../parts/CheckList.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { monthName } from '../../parts/days.ts';
import { TextField } from '../../parts/Field.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import { MITE_METHODS } from '../../parts/words.ts';
import { useStore } from '../store-context.ts';
import styles from './Settings.module.css';
import type { Threshold } from './Thresholds.tsx';

const METHODS = Object.entries(MITE_METHODS).map(([value, label]) => ({
  value: value as Threshold['method'],
  label,
}));
const MONTHS = Array.from({ length: 12 }, (_, at) => ({ value: String(at + 1), label: monthName(at + 1) }));

export interface ThresholdSheetProps {
  readonly threshold: Threshold | undefined;
  readonly onClose: () => void;
}

/** One threshold: how counted, from what figure on, in which months, for where, and who says so. */
export function ThresholdSheet({ threshold, onClose }: ThresholdSheetProps) {
  const store = useStore();
  const [method, setMethod] = useState<Threshold['method'] | undefined>(threshold?.method);
  const [value, setValue] = useState(threshold ? String(threshold.value) : '');
  const [months, setMonths] = useState<readonly string[]>(threshold?.months.map(String) ?? []);
  const [jurisdiction, setJurisdiction] = useState(threshold?.jurisdiction ?? '');
  const [source, setSource] = useState(threshold?.source ?? '');
  const figure = Number(value.replace(',', '.'));
  const whole = method && figure > 0 && months.length > 0 && jurisdiction.trim() && source.trim();
  const save = async () => {
    if (!whole || !method) return;
    const changed: Threshold = {
      id: threshold?.id ?? newEntryId(),
      method,
      value: figure,
      months: months.map(Number).sort((a, b) => a - b),
      jurisdiction: jurisdiction.trim(),
      source: source.trim(),
    };
    const others = store.settings.value.miteThresholds.filter(({ id }) => id !== changed.id);
    await store.changeSettings({ miteThresholds: [...others, changed] });
    onClose();
  };
  return (
    <Sheet title={threshold ? 'Change the threshold' : 'Add a threshold'} onClose={onClose}>
      <div class={styles.column}>
        <ChoiceRow label="For counts by" options={METHODS} value={method} onChange={setMethod} />
        <TextField
          label={method === 'natural-drop' ? 'Act from (mites a day)' : 'Act from (mites in 100 bees)'}
          value={value}
          onChange={setValue}
          inputMode="decimal"
        />
        <CheckList label="In these months" options={MONTHS} value={months} onChange={setMonths} />
        <TextField
          label="For where"
          value={jurisdiction}
          onChange={setJurisdiction}
          hint="A country, a club, your own yards."
        />
        <TextField
          label="Who says so"
          value={source}
          onChange={setSource}
          hint="The advisory sheet and its year, or your own experience."
        />
        <Button look="main" disabled={!whole} onPress={save}>
          Save the threshold
        </Button>
      </div>
    </Sheet>
  );
}
