import { useMemo } from 'preact/hooks';
import { dayOfNumber } from '../../src/journal/day.ts';
import type { Queen } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { shortDay } from '../parts/days.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { useWidth } from '../parts/use-width.ts';
import { besides, type HerTrait, herTraits, shared } from './her-traits.ts';
import queenStyles from './Queen.module.css';
import { TraitEnds, TraitGroup } from './TraitGroup.tsx';
import styles from './Traits.module.css';

/** What her colonies did, each record among those of the same yard and season; what does not count, and why. */
export function Traits({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const { box, width } = useWidth();
  const traits = useMemo(() => herTraits(registry, queen.id), [registry, queen.id]);
  return (
    <section class={`${queenStyles.section} ${queenStyles.traits}`} aria-labelledby="traits">
      <h2 id="traits">Her colonies beside their neighbours</h2>
      {traits.length === 0 ? (
        <p>
          Here stand scores, mite counts, strength and winters of her colonies, each among its neighbours of
          the same yard and season. Nothing is written yet that was her workers' doing.
        </p>
      ) : (
        <p class={queenStyles.quiet}>
          Each dot is a queen of the same yard and season; hers is filled. To the right is better.
        </p>
      )}
      <div ref={box} class={styles.traits}>
        {width > 0 && traits.map((trait) => <TraitBlock key={trait.trait} trait={trait} width={width} />)}
      </div>
    </section>
  );
}

function TraitBlock({ trait, width }: { readonly trait: HerTrait; readonly width: number }) {
  const aside = besides(trait);
  return (
    <div class={styles.trait}>
      <h3>
        {TRAIT_TITLES[trait.trait]} <span class={styles.shared}>{shared(trait)}</span>
      </h3>
      {trait.groups.map((group, index) => (
        <TraitGroup key={group.key} trait={trait} group={group} beside={aside[index] ?? ''} width={width} />
      ))}
      <TraitEnds trait={trait} width={width} />
      {trait.trait === 'mite-level' && (
        <p class={queenStyles.quiet}>Half a mite is added to each count: none found is not none there.</p>
      )}
      {trait.aside.length > 0 && <SetAsideRecords trait={trait} />}
    </div>
  );
}

/** Records that would have been hers and do not count. They stay in sight, with the reason. */
function SetAsideRecords({ trait }: { readonly trait: HerTrait }) {
  const on = useStore().on.value;
  return (
    <ul class={styles.aside} aria-label={`Set aside: ${TRAIT_TITLES[trait.trait]}`}>
      {trait.aside.map(({ observations, day, sentence }) => (
        <li key={observations.join()}>
          <a href={routes.entry(observations.at(-1) ?? '')}>{shortDay(dayOfNumber(day), on)}</a> set aside:{' '}
          {sentence}
        </li>
      ))}
    </ul>
  );
}
