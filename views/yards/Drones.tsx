import { useState } from 'preact/hooks';
import { yearOf } from '../../src/journal/day.ts';
import { droneKey, type Yard } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import styles from './Drones.module.css';
import { DronesSheet } from './DronesSheet.tsx';

/** Whose drones fly at a yard, season by season, as the keeper judged it. */
export function Drones({ yard }: { readonly yard: Yard }) {
  const registry = useRegistry();
  const season = yearOf(useStore().on.value);
  const [open, setOpen] = useState(false);
  const said = [...registry.droneBackgrounds.values()]
    .filter((entry) => entry.yard === yard.id)
    .sort((a, b) => b.season - a.season);
  const thisSeason = registry.droneBackgrounds.get(droneKey(yard.id, season));
  return (
    <section class={styles.drones}>
      <h3>Drones at this yard</h3>
      {said.length === 0 && (
        <p>
          Nothing said yet. Virgins of this yard meet drones of your own colonies and of bees you keep no
          records of; how many of each decides how closely related the mates are.
        </p>
      )}
      {said.map((entry) => (
        <div key={entry.id} class={styles.season}>
          <p>
            <strong>{entry.season}</strong>: {Math.round(entry.ownShare * 100)} % from your own colonies
            {entry.droneColonies && entry.droneColonies.length > 0 && (
              <>
                {' '}
                (
                {entry.droneColonies.map(({ colony }) => (
                  <span key={colony}>
                    <ColonyLabel colony={colony} />{' '}
                  </span>
                ))}
                )
              </>
            )}
            , the rest {entry.background}
          </p>
          <div class={styles.share} aria-hidden="true">
            <div style={{ width: `${entry.ownShare * 100}%` }} />
          </div>
        </div>
      ))}
      <Button onPress={() => setOpen(true)}>
        {thisSeason ? `Correct ${season}` : `Say who flies in ${season}`}
      </Button>
      {open && (
        <DronesSheet
          yard={yard}
          season={season}
          before={thisSeason ?? said[0]}
          onClose={() => setOpen(false)}
        />
      )}
    </section>
  );
}
