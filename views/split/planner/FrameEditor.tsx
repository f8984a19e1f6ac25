import { Button } from '../../parts/Button.tsx';
import { CheckList } from '../../parts/CheckList.tsx';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import styles from './FrameEditor.module.css';
import type { Quarter, SketchFrame } from './sketch.ts';

export interface FrameEditorProps {
  readonly frame: SketchFrame;
  readonly place: number;
  readonly onChange: (change: Partial<SketchFrame>) => void;
  readonly onNext: (() => void) | undefined;
}

const QUARTERS = [
  { value: '0', label: 'none' },
  { value: '0.25', label: '¼' },
  { value: '0.5', label: '½' },
  { value: '0.75', label: '¾' },
  { value: '1', label: 'full' },
] as const;

const AGES = [
  { value: 'open', label: 'Mostly open' },
  { value: 'both', label: 'Both' },
  { value: 'capped', label: 'Mostly capped' },
] as const;

const ON_IT = [
  { value: 'eggs', label: 'Eggs or youngest larvae' },
  { value: 'queen', label: 'The queen' },
  { value: 'cells', label: 'Queen cells' },
] as const;

/** One frame corrected by taps: how far bees cover it, brood and its age, stores, and what else is on it. */
export function FrameEditor({ frame, place, onChange, onNext }: FrameEditorProps) {
  const pick = (field: 'bees' | 'brood' | 'stores') => (value: string | undefined) =>
    value !== undefined && onChange({ [field]: Number(value) as Quarter });
  const onIt = ON_IT.map(({ value }) => value).filter((each) => frame[each]);
  return (
    <div class={styles.editor}>
      <div class={styles.head}>
        <h3>Frame {place}</h3>
        {onNext && (
          <Button look="quiet" onPress={onNext}>
            Next frame
          </Button>
        )}
      </div>
      <ChoiceRow
        label="Covered by bees"
        required
        options={QUARTERS}
        value={String(frame.bees) as (typeof QUARTERS)[number]['value']}
        onChange={pick('bees')}
      />
      <ChoiceRow
        label="Brood"
        required
        options={QUARTERS}
        value={String(frame.brood) as (typeof QUARTERS)[number]['value']}
        onChange={pick('brood')}
      />
      {frame.brood > 0 && (
        <ChoiceRow
          label="Its brood is"
          required
          options={AGES}
          value={frame.age}
          onChange={(age) => age && onChange({ age })}
        />
      )}
      <ChoiceRow
        label="Stores"
        required
        options={QUARTERS}
        value={String(frame.stores) as (typeof QUARTERS)[number]['value']}
        onChange={pick('stores')}
      />
      <CheckList
        label="On it"
        options={ON_IT}
        value={onIt}
        onChange={(next) =>
          onChange({
            eggs: next.includes('eggs'),
            queen: next.includes('queen'),
            cells: next.includes('cells'),
          })
        }
      />
    </div>
  );
}
