import { Button } from '../parts/Button.tsx';
import styles from './KeptNotice.module.css';

/** Says that a form left open is taken up again, and offers a fresh one. */
export function KeptNotice({ leftAt, onFresh }: { readonly leftAt: Date; readonly onFresh: () => void }) {
  const time = `${leftAt.getHours()}:${String(leftAt.getMinutes()).padStart(2, '0')}`;
  return (
    <p class={styles.kept}>
      Taken up where you left it at {time}; not saved yet.{' '}
      <Button look="quiet" onPress={onFresh}>
        Start fresh
      </Button>
    </p>
  );
}
