import { useState } from 'preact/hooks';
import { coloniesAt, isLiving } from '../../src/registry/queries.ts';
import type { Yard } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { awaitingOutcome, byRoof, winterInQuestion } from '../parts/colony-facts.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { count, winterText } from '../parts/words.ts';
import spoken from '../style/spoken.module.css';
import { AddColony } from './AddColony.tsx';
import { ColonyLine, type RoofPlace } from './ColonyLine.tsx';
import { Drones } from './Drones.tsx';
import { Ended } from './Ended.tsx';
import { winterSentence } from './winter-sentence.ts';
import styles from './YardSection.module.css';

export interface YardSectionProps {
  readonly yard: Yard;
  /** The yard has the page to itself. */
  readonly alone: boolean;
}

/** One yard as seen walking along its stands: each hive from above, who heads it, how strong, what happened last. */
export function YardSection({ yard, alone }: YardSectionProps) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const [adding, setAdding] = useState(false);
  const colonies = coloniesAt(registry, yard.id, on);
  const winter = winterInQuestion(on);
  const awaiting = awaitingOutcome(registry, yard, winter, on).filter((colony) => isLiving(colony, on));
  const wintered = winterSentence(registry, yard, winter);
  return (
    <section class={styles.yard} aria-labelledby={`yard-${yard.id}`}>
      <div class={`${styles.head} ${alone ? styles.alone : ''}`}>
        <h2 id={`yard-${yard.id}`} class={alone ? spoken.only : undefined}>
          <a href={routes.yard(yard.id)}>{yard.name}</a>
        </h2>
        <p class={styles.about}>{[!alone && yard.where, wintered].filter(Boolean).join('. ')}</p>
      </div>
      {awaiting.length > 0 && (
        <p class={styles.ask}>
          <a href={routes.winterWalk(yard.id)}>
            {winterText(winter).replace('winter', 'Winter')}: {count(awaiting.length, 'outcome')} not written
            down yet
          </a>
        </p>
      )}
      {colonies.length === 0 ? (
        <EmptyState action={{ label: 'Add a colony', onPress: () => setAdding(true) }}>
          The colonies of this yard will stand here, each with the queen who heads it.
        </EmptyState>
      ) : (
        <ul class={styles.stands}>
          {byRoof(colonies, on).map((roof) => (
            <li key={roof[0]?.id}>
              {roof.map((colony, at) => (
                <ColonyLine key={colony.id} colony={colony} roof={placeUnder(roof.length, at)} />
              ))}
            </li>
          ))}
        </ul>
      )}
      <div class={styles.acts}>
        {colonies.length > 0 && (
          <Button look="quiet" onPress={() => setAdding(true)}>
            Add a colony
          </Button>
        )}
        {!alone && (
          <Button look="quiet" href={routes.yard(yard.id)}>
            Drones and past colonies
          </Button>
        )}
      </div>
      {alone && <Drones yard={yard} />}
      {alone && <Ended yard={yard} />}
      {adding && <AddColony yard={yard} onClose={() => setAdding(false)} />}
    </section>
  );
}

function placeUnder(hives: number, at: number): RoofPlace {
  if (hives === 1) return 'own';
  return at === 0 ? 'first' : at === hives - 1 ? 'last' : 'middle';
}
