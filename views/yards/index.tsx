import { useState } from 'preact/hooks';
import { coloniesAt } from '../../src/registry/queries.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { shownHead } from '../parts/awaited.ts';
import { Button } from '../parts/Button.tsx';
import { yardsInOrder } from '../parts/colony-facts.ts';
import { HeadKey } from '../parts/HeadKey.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { count } from '../parts/words.ts';
import { AddYard } from './AddYard.tsx';
import { YardSection } from './YardSection.tsx';
import styles from './Yards.module.css';

/** Who is where: every yard in the order of driving, or one yard with all that belongs to it. */
export function Yards({ id }: { readonly id?: string }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const [adding, setAdding] = useState(false);
  const all = yardsInOrder(registry);
  const shown = id ? all.filter((yard) => yard.id === id) : all;
  const colonies = shown.flatMap((yard) => coloniesAt(registry, yard.id, on));
  const only = id ? shown[0] : undefined;
  if (id && !only) {
    return (
      <PageHeader
        title="This yard is not in these records"
        lead="It may belong to other records, or was not yet open on the day shown."
        actions={<Button href={routes.yards()}>To the yards</Button>}
      />
    );
  }
  return (
    <>
      <PageHeader
        title={only ? only.name : 'Yards'}
        {...(only ? { above: { label: 'All yards', href: routes.yards() } } : {})}
        lead={
          only
            ? [livingWords(colonies.length), only.where && `${only.where}.`].filter(Boolean).join(' ')
            : `${count(colonies.length, 'living colony', 'living colonies')} in ${count(all.length, 'yard')}.`
        }
        actions={
          !only && (
            <p class={styles.across}>
              Across the yards: <a href={routes.mites()}>mites</a> <a href={routes.winters()}>winters</a>
            </p>
          )
        }
      />
      {colonies.length > 0 && <HeadKey heads={colonies.map((colony) => shownHead(registry, colony, on))} />}
      <div class={styles.yards}>
        {shown.map((yard) => (
          <YardSection key={yard.id} yard={yard} alone={only !== undefined} />
        ))}
      </div>
      {!only && (
        <div class={styles.end}>
          <Button onPress={() => setAdding(true)}>Add a yard</Button>
        </div>
      )}
      {adding && <AddYard onClose={() => setAdding(false)} />}
    </>
  );
}

function livingWords(living: number): string {
  return living === 0 ? 'No living colony yet.' : `${count(living, 'living colony', 'living colonies')}.`;
}
