import { queenTitle } from '../../src/registry/queries.ts';
import { Button } from '../parts/Button.tsx';
import { headOfSource } from './drafts.ts';
import type { PartBoxProps } from './PartBox.tsx';
import styles from './PartContents.module.css';
import { FRAME_KINDS, FRAME_WORDS, type Hand, type PlanPart, SOURCE, type SplitPlan } from './plan.ts';
import { Swatch } from './Swatch.tsx';
import { Token } from './Token.tsx';

/** What lies in a part: the old queen and the frames, each to be lifted; and room to set down what is in the hand. */
export function PartContents({ plan, part, registry, title, hand, onHand, onSetDown }: PartBoxProps) {
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
export function isResting(plan: SplitPlan, part: PlanPart, hand: Hand): boolean {
  if (hand.holds === 'queen') return plan.oldQueenIn === part.key;
  return part.key === SOURCE && hand.from === undefined;
}
