import type { PlainDay } from '../../../src/journal/day.ts';
import type { Colony } from '../../../src/registry/state.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { lastStrength } from '../../parts/colony-facts.ts';
import { shortDay } from '../../parts/days.ts';
import { Notice } from '../../parts/Notice.tsx';
import { LOSS_CHOICES, sentence, winterText } from '../../parts/words.ts';
import { FramePick } from '../FramePick.tsx';
import type { Outcome } from './outcome.ts';

const ALIVE = [
  { value: 'alive', label: 'Alive' },
  { value: 'dead', label: 'Dead' },
] as const;

export interface OutcomeFieldsProps {
  readonly colony: Colony;
  readonly winter: number;
  readonly value: Outcome;
  readonly onChange: (value: Outcome) => void;
}

/** Alive or dead; then its strength, or the cause while it is fresh. */
export function OutcomeFields({ colony, winter, value, onChange }: OutcomeFieldsProps) {
  const autumn = lastStrength(colony, `${winter - 1}-12-01` as PlainDay);
  const isOfThatAutumn = autumn && autumn.day >= `${winter - 1}-08-01`;
  return (
    <>
      <ChoiceRow
        label={sentence(winterText(winter))}
        size="hive"
        options={ALIVE}
        value={value.alive === undefined ? undefined : value.alive ? 'alive' : 'dead'}
        onChange={(alive) =>
          onChange({ ...value, alive: alive === undefined ? undefined : alive === 'alive' })
        }
      />
      {value.alive && (
        <FramePick
          label="Frames of bees now"
          value={value.spring}
          onChange={(spring) => onChange({ ...value, spring })}
          last={undefined}
        />
      )}
      {value.alive !== undefined && (
        <FramePick
          label="Frames of bees in autumn"
          value={value.autumn}
          onChange={(frames) => onChange({ ...value, autumn: frames })}
          last={isOfThatAutumn ? { value: autumn.frames, when: shortDay(autumn.day) } : undefined}
        />
      )}
      {value.alive === false && (
        <>
          <ChoiceRow
            label="Likely cause"
            options={LOSS_CHOICES}
            value={value.cause}
            onChange={(cause) => onChange({ ...value, cause })}
          />
          <Notice>
            Close the hive against robbing. If brood disease is possible, ask the bee inspector before you
            move a comb.
          </Notice>
        </>
      )}
    </>
  );
}
