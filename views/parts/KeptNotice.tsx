import { localDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import { Button } from '../parts/Button.tsx';
import styles from './KeptNotice.module.css';

/** Says that a form left open is taken up again, and offers a fresh one. */
export function KeptNotice({ leftAt, onFresh }: { readonly leftAt: Date; readonly onFresh: () => void }) {
  const left = localDay(leftAt);
  const clock = `${leftAt.getHours()}:${String(leftAt.getMinutes()).padStart(2, '0')}`;
  const time = left === localDay(new Date()) ? `at ${clock}` : `on ${dayText(left)} at ${clock}`;
  return (
    <p class={styles.kept}>
      Taken up where you left it {time}; not saved yet.{' '}
      <Button look="quiet" onPress={onFresh}>
        Start fresh
      </Button>
    </p>
  );
}
