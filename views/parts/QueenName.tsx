import type { QueenId } from '../../src/journal/ids.ts';
import { damCertainty, queenTitle } from '../../src/registry/queries.ts';
import type { Queen } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import spoken from '../style/spoken.module.css';
import { MarkDot } from './MarkDot.tsx';
import { usePlainNames } from './plain-names.ts';
import styles from './QueenName.module.css';

export interface QueenNameProps {
  readonly queen: Queen | QueenId;
  /** Plain text instead of a link to her page. */
  readonly plain?: boolean;
  readonly hideMark?: boolean;
}

const WORDS = { firm: 'dam known', probable: 'dam probable', unknown: 'dam unknown' } as const;

/**
 * A queen, everywhere the same: her name in italics, her mark, and under the name the line to her dam. An unbroken
 * line is a firm dam, a broken one a probable dam, none with a question mark an unknown one.
 */
export function QueenName({ queen, plain = false, hideMark = false }: QueenNameProps) {
  const { registry } = useStore();
  const unlinked = usePlainNames() || plain;
  const her = typeof queen === 'string' ? registry.value.queens.get(queen) : queen;
  if (!her) return <i class={styles.name}>a queen not in these records</i>;
  const certainty = damCertainty(her);
  const name = (
    <>
      <i class={`${styles.name} ${styles[certainty]} ${her.name ? '' : styles.unnamed}`}>{queenTitle(her)}</i>
      {certainty === 'unknown' && (
        <span class={styles.query} aria-hidden="true">
          ?
        </span>
      )}
      <span class={spoken.only}>, {WORDS[certainty]}</span>
    </>
  );
  return (
    <span class={styles.queen} title={WORDS[certainty]}>
      {!hideMark && her.mark && (
        <>
          <MarkDot colour={her.mark.colour} number={her.mark.number} />{' '}
        </>
      )}
      {unlinked ? name : <a href={routes.queen(her.id)}>{name}</a>}
    </span>
  );
}
