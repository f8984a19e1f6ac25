import { Button } from '../parts/Button.tsx';
import styles from './HandBar.module.css';
import { FRAME_WORDS, type Hand } from './plan.ts';

/** What is in the hand, at the foot of the screen while something is. */
export function HandBar({
  hand,
  onPutBack,
}: {
  readonly hand: Hand | undefined;
  readonly onPutBack: () => void;
}) {
  return (
    <div class={hand ? styles.bar : styles.empty} role="status">
      {hand && (
        <>
          <p>
            In hand:{' '}
            <b>{hand.holds === 'queen' ? 'the old queen' : `a frame of ${FRAME_WORDS[hand.kind]}`}</b>
          </p>
          <Button onPress={onPutBack}>Done with it</Button>
        </>
      )}
    </div>
  );
}
