import type { ColonyId } from '../../src/journal/ids.ts';
import { coloniesAt } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { shownHead } from '../parts/awaited.ts';
import { byRoof, lastEntry, placeOf, yardsInOrder } from '../parts/colony-facts.ts';
import { relativeDay } from '../parts/days.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { HeadLine } from '../parts/HeadLine.tsx';
import { HiveMark } from '../parts/HiveMark.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import styles from './WhereToRecord.module.css';

/** Which hive to record at: the one that was open last first, then every yard along its stands. */
export function WhereToRecord() {
  const { registry, on, settings } = useStore();
  const last = registry.value.colonies.get(settings.value.lastPlace as ColonyId);
  const yards = yardsInOrder(registry.value);
  const any = yards.some((yard) => coloniesAt(registry.value, yard.id, on.value).length > 0);
  return (
    <>
      <PageHeader title="Record at which hive?" />
      {!any && (
        <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
          The hives will stand here once a yard has a colony.
        </EmptyState>
      )}
      <div class={styles.yards}>
        {last && !last.ended && (
          <section>
            <h2>Open last</h2>
            <HiveLink colony={last} />
          </section>
        )}
        {yards.map((yard) => (
          <section key={yard.id}>
            <h2>{yard.name}</h2>
            {byRoof(coloniesAt(registry.value, yard.id, on.value), on.value)
              .flat()
              .map((colony) => (
                <HiveLink key={colony.id} colony={colony} />
              ))}
          </section>
        ))}
      </div>
    </>
  );
}

function HiveLink({ colony }: { readonly colony: Colony }) {
  const { registry, on } = useStore();
  const last = lastEntry(colony, on.value);
  return (
    <div class={styles.hive}>
      <a href={routes.record(colony.id)} aria-label={`Record at ${colony.label}`}>
        <HiveMark
          head={shownHead(registry.value, colony, on.value)}
          entrance={placeOf(colony, on.value)?.entrance}
        />
        <strong>{colony.label}</strong>
      </a>
      <span class={styles.who}>
        <HeadLine colony={colony} registry={registry.value} on={on.value} />
      </span>
      {last && <span class={styles.last}>{relativeDay(last.day, on.value)}</span>}
    </div>
  );
}
