import type { HeadState } from '../../src/registry/queries.ts';
import styles from './HeadKey.module.css';
import { HiveMark } from './HiveMark.tsx';

const ROWS: readonly { readonly head: HeadState; readonly words: string }[] = [
  { head: 'proven', words: 'proven through a winter' },
  { head: 'laying', words: 'laying, no winter on record' },
  { head: 'expected', words: 'expected: cells or a virgin' },
  { head: 'nobody-known', words: 'nobody known' },
];

/** How many colonies are headed by whom; at the same time the key to the marks. */
export function HeadKey({ heads }: { readonly heads: readonly HeadState[] }) {
  return (
    <ul class={styles.key}>
      {ROWS.map(({ head, words }) => (
        <li key={head}>
          <HiveMark head={head} size={26} />
          <strong>{heads.filter((each) => each === head).length}</strong> {words}
        </li>
      ))}
    </ul>
  );
}
