import { useEffect, useMemo } from 'preact/hooks';
import { traitWeights } from '../../src/store/trait-weights.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { shortDay } from '../parts/days.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { StrengthBar } from '../parts/StrengthBar.tsx';
import { count } from '../parts/words.ts';
import { notNow, placesOf, type SplitCandidate, splitFirst } from './first.ts';
import { frameSizes } from './planner/sketch.ts';
import styles from './SplitFirst.module.css';

/** Which colony to split first: swarm signs, then survivors by strength, with the place of their queens beside. */
export function SplitFirst() {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const settings = store.settings.value;
  useEffect(() => store.watchEvaluation(), [store]);
  const state = store.evaluation.value;
  const evaluated = state.is === 'ready' ? state.evaluated : undefined;
  const places = useMemo(
    () => (evaluated ? placesOf(evaluated, traitWeights(settings)) : new Map()),
    [evaluated, settings],
  );
  const size = frameSizes(settings.frameSizes)[0];
  const candidates = splitFirst(registry, on, { places, size });
  const signs = candidates.filter((each) => each.signs !== undefined);
  if (candidates.length === 0) {
    return (
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        The colonies that can be split will stand here, those with swarm signs first, once a queen lays in
        one.
      </EmptyState>
    );
  }
  return (
    <>
      <PageHeader
        title="Which to split first"
        lead={
          signs.length > 0
            ? `Swarm signs in ${signs.map(({ colony }) => colony.label).join(', ')}: what is not split may leave.`
            : 'No swarm signs at the last looks. Survivors stand first, the strongest of them on top.'
        }
      />
      <ol class={styles.list}>
        {candidates.map((each) => (
          <Candidate key={each.colony.id} candidate={each} />
        ))}
      </ol>
      <LeftAlone />
      <p class={styles.key}>
        In this order: swarm signs seen within two weeks, then queens who came through a winter, then frames
        of bees. The place is that of her breeding values by your weights (Choose) and does not move the
        order.
      </p>
    </>
  );
}

function Candidate({ candidate }: { readonly candidate: SplitCandidate }) {
  const on = useStore().on.value;
  const { colony, head, signs, strength, winters, place, small } = candidate;
  return (
    <li class={styles.one}>
      <div>
        <p>
          <ColonyLabel colony={colony} /> <QueenName queen={head} />
        </p>
        {signs && <p class={styles.signs}>Swarm signs on {shortDay(signs, on)}</p>}
        <p class={styles.why}>
          {[
            winters > 0 ? `proven, ${count(winters, 'winter')}` : 'no winter on record',
            place && `place ${place.place} of ${place.of} by your weights`,
            small && 'small for two parts',
          ]
            .filter(Boolean)
            .join(', ')}
        </p>
      </div>
      <StrengthBar strength={strength} on={on} />
      <div class={styles.acts}>
        <Button href={routes.planSplit(colony.id)} label={`Plan a split of ${colony.label}`}>
          Plan it
        </Button>
        <Button look="quiet" href={routes.split(colony.id)} label={`Record a split of ${colony.label}`}>
          Record it
        </Button>
      </div>
    </li>
  );
}

function LeftAlone() {
  const registry = useRegistry();
  const colonies = notNow(registry, useStore().on.value);
  if (colonies.length === 0) return null;
  return (
    <p class={styles.alone}>
      No queen lays here yet, so not now:{' '}
      {colonies.map((colony) => (
        <span key={colony.id}>
          <ColonyLabel colony={colony} />{' '}
        </span>
      ))}
    </p>
  );
}
