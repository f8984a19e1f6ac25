import { useStore } from '../../app/store-context.ts';
import { lastObserved } from '../../parts/colony-facts.ts';
import { shortDay } from '../../parts/days.ts';
import { PickRow } from '../PickRow.tsx';
import type { LookProps } from './InspectionForm.tsx';

/**
 * What the four points mean, after the standard protocols for temper and swarming (common practice in performance
 * tests; the words are ours).
 */
const ROWS = [
  {
    field: 'gentle',
    label: 'Gentle',
    ends: '1 attack, 4 need no smoke',
    means: [
      'attack and follow',
      'sting unless smoked',
      'gentle with a little smoke',
      'need neither smoke nor veil',
    ],
  },
  {
    field: 'calm',
    label: 'Calm on the comb',
    ends: '1 run off, 4 sit still',
    means: ['run off the comb', 'run and hang in clusters', 'move a little', 'sit as if untouched'],
  },
  {
    field: 'swarmTendency',
    label: 'Swarming',
    ends: '1 swarmed, 4 no cells',
    means: [
      'swarmed or not to be held',
      'cells again and again',
      'few cells, held by giving room',
      'no swarm cells',
    ],
  },
] as const;

/** Temper and swarming, 1 to 4, half points by a second tap. */
export function Temper({ colony, look, onSeen }: LookProps) {
  const on = useStore().on.value;
  return (
    <>
      {ROWS.map(({ field, label, ends, means }) => {
        const last = lastObserved(colony, on, field);
        const value = look.seen[field];
        return (
          <PickRow
            key={field}
            label={label}
            values={[1, 2, 3, 4]}
            value={value}
            onChange={(next) => onSeen({ [field]: next })}
            last={last && { value: last.value, when: shortDay(last.day, on) }}
            hint={value === undefined ? ends : means[Math.floor(value) - 1]}
          />
        );
      })}
    </>
  );
}
