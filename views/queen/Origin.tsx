import type { PossibleDam } from '../../src/journal/entry-parts.ts';
import { damCertainty } from '../../src/registry/queries.ts';
import type { Queen } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { DroneWords } from '../lines/DroneWords.tsx';
import { droneSources } from '../lines/drone-sources.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayInYear } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { damHeading, madeText, unknownShare } from '../parts/queen-words.ts';
import { EVIDENCE, sentence } from '../parts/words.ts';
import { FoundersLeft } from './FoundersLeft.tsx';
import styles from './Origin.module.css';
import queenStyles from './Queen.module.css';
import { ShareBar } from './ShareBar.tsx';

/** How she was made: her dam and how that is known, the event and the sisters out of it, the drones she met. */
export function Origin({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const drones = droneSources(registry, queen);
  return (
    <section class={`${queenStyles.section} ${queenStyles.origin}`} aria-labelledby="origin">
      <h2 id="origin">Where she comes from</h2>
      <Dams queen={queen} />
      <MadeIn queen={queen} />
      {drones && (
        <details class={styles.drones}>
          <summary>The drones she met</summary>
          <DroneWords drones={drones} />
        </details>
      )}
      <FoundersLeft queen={queen} />
    </section>
  );
}

function Dams({ queen }: { readonly queen: Queen }) {
  const dams = [...(queen.parentage?.dams ?? [])].sort((a, b) => b.probability - a.probability);
  const missing = unknownShare(queen);
  const from = queen.from ?? queen.background;
  return (
    <div class={styles.dams}>
      <h3>{damHeading(queen)}</h3>
      {dams.length > 0 && (
        <ul class={damCertainty(queen) === 'firm' ? styles.firm : styles.probable}>
          {dams.map((dam) => (
            <DamRow key={dam.queen} dam={dam} />
          ))}
          {queen.orDaughterOf && (
            <li>
              or a daughter of <QueenName queen={queen.orDaughterOf} />, whose brood was there too
            </li>
          )}
          {missing > 0 && (
            <li>
              <span class={styles.unknown}>a queen not on record</span>
              <ShareBar share={missing} />
            </li>
          )}
        </ul>
      )}
      {queen.parentage && dams.length > 0 && <p>{sentence(EVIDENCE[queen.parentage.evidence])}.</p>}
      {dams.length === 0 && (
        <p>{from ? `She comes from ${from}.` : 'She is taken for the founder of a line.'}</p>
      )}
    </div>
  );
}

function DamRow({ dam }: { readonly dam: PossibleDam }) {
  return (
    <li>
      <QueenName queen={dam.queen} />
      {dam.probability < 1 && <ShareBar share={dam.probability} />}
    </li>
  );
}

function MadeIn({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const making = queen.madeBy && registry.makings.get(queen.madeBy);
  if (!making) return null;
  const others = making.queens.filter((id) => id !== queen.id);
  return (
    <div>
      <p>
        {madeText(making)}
        {making.colony && (
          <>
            {making.how === 'split' ? ' of ' : ' in '}
            <ColonyLabel colony={making.colony} />
          </>
        )}
        , {dayInYear(making.day, on)}.
      </p>
      {others.length > 0 && (
        <>
          <p class={queenStyles.quiet}>Out of the same:</p>
          <ul class={styles.sisters}>
            {others.map((id) => (
              <li key={id}>
                <QueenName queen={id} />
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
