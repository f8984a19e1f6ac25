import { type EntryKind, kindTitle } from '../../src/journal/entry.ts';
import { ENTRY_KINDS } from '../../src/journal/fields.ts';
import { routes } from '../app/routes.ts';
import type { RecordFormProps } from './index.tsx';
import styles from './OtherKinds.module.css';

/** Which kinds belong under which heading; a kind not named here stands under the last. */
const GROUPS: readonly { readonly title: string; readonly kinds: readonly EntryKind[] }[] = [
  {
    title: 'Increase',
    kinds: ['split', 'cells-given', 'eggs-given', 'graft', 'frames-moved'],
  },
  {
    title: 'The box',
    kinds: [
      'colony-started',
      'colony-moved',
      'colony-relabelled',
      'colonies-joined',
      'colony-ended',
      'yard-opened',
      'drone-background',
    ],
  },
  {
    title: 'The queen',
    kinds: [
      'mating',
      'parentage-stated',
      'queen-entered',
      'queen-expected',
      'queen-found',
      'queen-confirmed',
      'queen-marked',
      'queen-named',
      'queen-lost',
      'queen-moved',
    ],
  },
  { title: 'Everything else', kinds: [] },
];

/** Every kind of entry there is, for what the forms at the hive do not ask. */
export function OtherKinds({ colony }: Partial<RecordFormProps>) {
  const named = new Set(GROUPS.flatMap(({ kinds }) => kinds));
  return (
    <div class={styles.groups}>
      {GROUPS.map(({ title, kinds }) => (
        <section key={title}>
          <h2>{title}</h2>
          <ul>
            {(kinds.length > 0 ? kinds : ENTRY_KINDS.filter((kind) => !named.has(kind))).map((kind) => (
              <li key={kind}>
                <a href={hrefOf(kind, colony?.id)}>{kindTitle(kind)}</a>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

function hrefOf(kind: EntryKind, colony: string | undefined): string {
  if (kind === 'split' && colony) return routes.split(colony);
  return routes.recordAny(kind, colony ? { colony } : {});
}
