import { useEffect } from 'preact/hooks';
import type { ColonyId } from '../../src/journal/ids.ts';
import { isLiving } from '../../src/registry/queries.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { UnmarkedAsk } from '../parts/UnmarkedAsk.tsx';
import { Acts } from './Acts.tsx';
import styles from './Colony.module.css';
import { ColonyHeader } from './ColonyHeader.tsx';
import { LifeBand } from './LifeBand.tsx';
import { Mites } from './Mites.tsx';
import { Next } from './Next.tsx';
import { Timeline } from './Timeline.tsx';

/** A colony: its state now, who headed it when, what happened in order, and everything that can be done to it. */
export function ColonyPage({ id }: { readonly id?: string }) {
  const store = useStore();
  const registry = useRegistry();
  const colony = registry.colonies.get(id as ColonyId);
  useEffect(() => {
    if (colony) void store.changeSettings({ lastPlace: colony.id });
  }, [colony?.id]);
  if (!colony) {
    return (
      <PageHeader
        title="This colony is not in these records"
        lead="It may belong to other records, or had not begun on the day shown."
        actions={<Button href={routes.yards()}>To the yards</Button>}
      />
    );
  }
  const alive = isLiving(colony, store.on.value);
  return (
    <>
      <ColonyHeader colony={colony} />
      {alive && <UnmarkedAsk colony={colony} />}
      <div class={styles.page}>
        <div class={styles.main}>
          <LifeBand colony={colony} />
          <Timeline colony={colony} />
        </div>
        <div class={styles.side}>
          {alive && <Next colony={colony} />}
          <Mites colony={colony} />
          {alive && <Acts colony={colony} />}
        </div>
      </div>
    </>
  );
}
