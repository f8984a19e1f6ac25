import { useStore } from '../../app/store-context.ts';
import { lastObserved } from '../../parts/colony-facts.ts';
import { shortDay } from '../../parts/days.ts';
import { FramePick } from '../FramePick.tsx';
import type { LookProps } from './InspectionForm.tsx';

const ROWS = [
  { field: 'framesOfBees', label: 'Frames of bees' },
  { field: 'framesOfBrood', label: 'Frames of brood' },
  { field: 'framesOfStores', label: 'Frames of stores' },
] as const;

/** Frames of bees, brood and stores, each around what was last seen. */
export function Strength({ colony, look, onSeen }: LookProps) {
  const on = useStore().on.value;
  return (
    <>
      {ROWS.map(({ field, label }) => {
        const last = lastObserved(colony, on, field);
        return (
          <FramePick
            key={field}
            label={label}
            value={look.seen[field]}
            onChange={(value) => onSeen({ [field]: value })}
            last={last && { value: last.value, when: shortDay(last.day, on) }}
          />
        );
      })}
    </>
  );
}
