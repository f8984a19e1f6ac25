import { coloniesAt, isLiving, yardOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { roofNeighbour } from '../parts/colony-facts.ts';
import { PageHeader } from '../parts/PageHeader.tsx';
import styles from './ColonyHeader.module.css';
import { StateSentence } from './StateSentence.tsx';

/** The label, the state in a sentence, the neighbour under the roof, and recording. */
export function ColonyHeader({ colony }: { readonly colony: Colony }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const yard = registry.yards.get(yardOn(colony, on) as never);
  const neighbour = yard && roofNeighbour(colony, on, coloniesAt(registry, yard.id, on));
  const alive = isLiving(colony, on);
  return (
    <PageHeader
      above={
        yard ? { label: yard.name, href: routes.yard(yard.id) } : { label: 'Yards', href: routes.yards() }
      }
      title={<ColonyLabel colony={colony} plain size="large" />}
      lead={
        <>
          <StateSentence colony={colony} registry={registry} on={on} />
          {neighbour && (
            <>
              {' '}
              Under one roof with <ColonyLabel colony={neighbour} />.
            </>
          )}
        </>
      }
      actions={
        alive && (
          <div class={styles.record}>
            <Button look="main" href={routes.record(colony.id, 'inspection')}>
              Inspection
            </Button>
            <Button href={routes.record(colony.id, 'mites')}>Mite count</Button>
            <Button href={routes.record(colony.id, 'queen')}>Queen</Button>
            <Button href={routes.record(colony.id, 'treatment')}>Treatment</Button>
            <Button href={routes.record(colony.id, 'feeding')}>Feeding</Button>
            <Button href={routes.split(colony.id)}>Split</Button>
            <Button href={routes.carry(colony.id)}>Carry frames</Button>
            <Button href={routes.record(colony.id, 'note')}>Note</Button>
            <Button href={routes.record(colony.id, 'other')}>More</Button>
          </div>
        )
      }
    />
  );
}
