import { dayNumber, dayOfNumber } from '../../src/journal/day.ts';
import { queenTitle } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { Button } from '../parts/Button.tsx';
import { TextField } from '../parts/Field.tsx';
import { MoreFields } from '../parts/MoreFields.tsx';
import { WindowBand } from '../parts/WindowBand.tsx';
import { BoxFields } from './BoxFields.tsx';
import { headOfSource, splitPart } from './drafts.ts';
import styles from './PartBox.module.css';
import { PartQueenChoice } from './PartQueenChoice.tsx';
import {
  FRAME_KINDS,
  FRAME_WORDS,
  type Hand,
  type PlanBox,
  type PlanPart,
  SOURCE,
  type SplitPlan,
} from './plan.ts';
import { Swatch } from './Swatch.tsx';
import { partStory } from './sentences.ts';
import { Token } from './Token.tsx';
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
      <Contents {...props} />
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
      <MoreFields label="Queen and place">
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

function Contents({ plan, part, registry, title, hand, onHand, onSetDown }: PartBoxProps) {
  const lift = (next: Hand) => () => onHand(next);
  const put = () => onHand(undefined);
  const head = headOfSource(plan, registry);
  const queen = head && registry.queens.get(head);
  const isSource = part.key === SOURCE;
  return (
    <div class={styles.contents}>
      {plan.oldQueenIn === part.key && queen && (
        <Token
          look="queen"
          label={`Lift the old queen, ${queenTitle(queen)}`}
          inHand={hand?.holds === 'queen'}
          onLift={lift({ holds: 'queen' })}
          onPutBack={put}
          onDrop={(key) => onSetDown({ holds: 'queen' }, key)}
        >
          <span aria-hidden="true">♀</span> {queenTitle(queen)}
        </Token>
      )}
      {FRAME_KINDS.map((kind) => {
        const count = part.frames[kind];
        if (!count) return null;
        const held: Hand = { holds: 'frame', kind, from: part.key };
        return (
          <Token
            key={kind}
            label={`Lift a frame of ${FRAME_WORDS[kind]} out of ${title}; ${count} in it`}
            inHand={hand?.holds === 'frame' && hand.from === part.key && hand.kind === kind}
            onLift={lift(held)}
            onPutBack={put}
            onDrop={(key) => onSetDown(held, key)}
          >
            <Swatch kind={kind} count={count} /> {count} × {FRAME_WORDS[kind]}
          </Token>
        );
      })}
      {isSource && <p class={styles.rest}>What is not taken out stays here.</p>}
      {hand && !isResting(plan, part, hand) && (
        <Button look="main" size="hive" wide onPress={() => onSetDown(hand, part.key)}>
          {isSource && hand.holds === 'frame' ? 'Put back here' : 'Set down here'}
        </Button>
      )}
    </div>
  );
}

/** True where setting down would change nothing. */
function isResting(plan: SplitPlan, part: PlanPart, hand: Hand): boolean {
  if (hand.holds === 'queen') return plan.oldQueenIn === part.key;
  return part.key === SOURCE && hand.from === undefined;
}
