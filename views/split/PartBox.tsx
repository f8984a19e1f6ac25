import { dayNumber, dayOfNumber } from '../../src/journal/day.ts';
import type { Registry } from '../../src/registry/state.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/Field.tsx';
import { MoreFields } from '../parts/MoreFields.tsx';
import { WindowBand } from '../parts/WindowBand.tsx';
import { BoxFields } from './BoxFields.tsx';
import { splitPart } from './drafts.ts';
import styles from './PartBox.module.css';
import { isResting, PartContents } from './PartContents.tsx';
import { PartQueenChoice } from './PartQueenChoice.tsx';
import { type Hand, type PlanBox, type PlanPart, queenOf, SOURCE, type SplitPlan } from './plan.ts';
import { partStory } from './sentences.ts';
import { PART_ATTRIBUTE } from './use-drag.ts';

export interface PartBoxProps {
  readonly plan: SplitPlan;
  readonly part: PlanPart;
  readonly registry: Registry;
  readonly title: string;
  readonly hand: Hand | undefined;
  readonly onHand: (hand: Hand | undefined) => void;
  readonly onSetDown: (hand: Hand, key: string) => void;
  readonly onPart: (part: PlanPart) => void;
  readonly onRemove: () => void;
}

/** One part of the split: its box from above, what lies in it, and the sentence of what it now is. */
export function PartBox(props: PartBoxProps) {
  const { plan, part, registry, title, hand, onPart } = props;
  const story = partStory(registry, splitPart(plan, part, registry), plan.day);
  const isSource = part.key === SOURCE;
  return (
    <section
      class={`${styles.part} ${isSource ? styles.source : ''} ${hand && !isResting(plan, part, hand) ? styles.ready : ''}`}
      aria-label={title}
      {...{ [PART_ATTRIBUTE]: part.key }}
    >
      <header class={styles.head}>
        <h2>{title}</h2>
        {!isSource && (
          <Button look="quiet" onPress={props.onRemove} label={`Leave out ${title}`}>
            leave out
          </Button>
        )}
      </header>
      {part.box.is === 'new' && <LabelField box={part.box} onBox={(box) => onPart({ ...part, box })} />}
      <PartContents {...props} />
      <p
        class={`${styles.story} ${story.hopeless && !isSource && Object.keys(part.frames).length > 0 ? styles.hopeless : ''}`}
        aria-live="polite"
      >
        {story.sentence}
      </p>
      {story.windows.length > 0 && (
        <div class={styles.windows}>
          {story.windows.map(({ label, window, likely }) => (
            <WindowBand
              key={label}
              label={label}
              window={window}
              likely={{ first: likely, last: likely }}
              scale={{ first: plan.day, last: dayOfNumber(dayNumber(plan.day) + 42) }}
              on={plan.day}
            />
          ))}
        </div>
      )}
      <MoreFields label="Queen and place" open={asksForAge(plan, part)}>
        <PartQueenChoice plan={plan} part={part} registry={registry} onPart={onPart} />
        {!isSource && <BoxFields plan={plan} part={part} registry={registry} onPart={onPart} />}
      </MoreFields>
    </section>
  );
}

type NewBox = Extract<PlanBox, { is: 'new' }>;

function LabelField({ box, onBox }: { readonly box: NewBox; readonly onBox: (box: NewBox) => void }) {
  return (
    <TextField
      label="Label on the new box"
      value={box.label}
      onChange={(label) => onBox({ ...box, label })}
    />
  );
}

function asksForAge(plan: SplitPlan, part: PlanPart): boolean {
  const choice = queenOf(plan, part);
  return choice.how === 'given-cells' && choice.age === 'unknown';
}
