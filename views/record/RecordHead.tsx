import type { Colony } from '../../src/registry/state.ts';
import { type RecordKind, routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { HeadLine, headWords } from '../parts/HeadLine.tsx';
import { usePageTitle } from '../parts/use-page-title.ts';
import styles from './RecordHead.module.css';
import { nextColony } from './walk.ts';

/** Which hive this is, who heads it, and the way to the next one. */
export function RecordHead({ colony, kind }: { readonly colony: Colony; readonly kind: RecordKind }) {
  const store = useStore();
  const registry = store.registry.value;
  const on = store.on.value;
  const next = nextColony(registry, colony, on);
  const heading = usePageTitle();
  return (
    <header class={styles.head}>
      <h1 ref={heading}>
        <ColonyLabel colony={colony} size="large" />
      </h1>
      <p class={styles.who}>
        <HeadLine colony={colony} registry={registry} on={on} />
        <span class={styles.state}>{headWords({ colony, registry, on })}</span>
      </p>
      {next && (
        <a class={styles.next} href={routes.record(next.id, kind)}>
          Next: {next.label}
        </a>
      )}
    </header>
  );
}
