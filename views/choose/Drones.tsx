import { EFFECTIVE_MATES } from '../../src/registry/pools.ts';
import type { Yard } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Count } from './Count.tsx';
import styles from './Drones.module.css';
import type { Choice } from './use-choice.ts';
import { useSetting } from './use-setting.ts';
import { poolWords } from './yard-risk.ts';

/** What is taken for granted of the drones: each yard's, the number of mates, the sex alleles. All can be changed. */
export function Drones({ choice, columns }: { readonly choice: Choice; readonly columns: readonly Yard[] }) {
  const { settings } = useStore();
  const [sexAlleles, setSexAlleles] = useSetting('sexAlleles');
  const [mates, setMates] = useSetting('effectiveMates');
  const pools = new Map(choice.evaluated.work.yards.map(({ yard, pool }) => [yard, pool]));
  return (
    <div class={styles.drones}>
      <h3>What this takes for granted</h3>
      <ul>
        {columns.map(({ id, name }) => {
          const pool = pools.get(id);
          return (
            pool && (
              <li key={id}>
                <a href={routes.yard(id)}>{name}</a>: {poolWords(pool)}
              </li>
            )
          );
        })}
      </ul>
      <p>
        Drones that nobody recorded count as strangers to one another and to your bees, unless you said
        otherwise for the yard. A daughter meets many drones, a few of whose sperm counts most; sex alleles
        are taken as equally frequent. Fewer mates widen the spread of the brood that lives, fewer alleles
        lower it.
      </p>
      <div class={styles.counts}>
        <Count
          label="Effective mates of a daughter"
          value={mates ?? EFFECTIVE_MATES}
          min={1}
          max={40}
          onChange={(value = EFFECTIVE_MATES) => setMates(value)}
        />
        <Count
          label="Sex alleles in the unrecorded bees"
          value={sexAlleles}
          min={2}
          max={200}
          onChange={(value = settings.value.sexAlleles) => setSexAlleles(value)}
        />
      </div>
    </div>
  );
}
