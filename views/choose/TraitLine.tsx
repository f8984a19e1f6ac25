import { dayOfNumber } from '../../src/journal/day.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { shortDay } from '../parts/days.ts';
import { percents } from '../parts/percents.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { besides, type HerTrait } from '../queen/her-traits.ts';
import { TraitEnds, TraitGroup } from '../queen/TraitGroup.tsx';
import styles from './TraitLine.module.css';
import { TraitMethod } from './TraitMethod.tsx';
import { effectWords, standingWords, type TraitStanding, warningWords } from './trait-standing.ts';
import { reliabilityWords, spreads } from './words.ts';

export interface TraitLineProps {
  readonly standing: TraitStanding;
  /** Her records of the trait, each among its neighbours; absent where there is none. */
  readonly hers: HerTrait | undefined;
  /** Pixels across. */
  readonly width: number;
}

/** One trait of a queen: what it adds to her merit; opened, the records and the groups they are compared in. */
export function TraitLine({ standing, hers, width }: TraitLineProps) {
  const { trait, contribution, reliability } = standing;
  return (
    <li>
      <details class={styles.trait}>
        <summary>
          <span class={styles.title}>{TRAIT_TITLES[trait.id]}</span>
          <span class={styles.words}>
            {contribution ? standingWords(contribution) : 'left out'}
            {contribution && `, ${reliabilityWords(reliability ?? 0)}`}
          </span>
          <span class={styles.points}>{contribution ? spreads(contribution.points) : ''}</span>
        </summary>
        <div class={styles.inside}>
          <Figures standing={standing} />
          {hers && width > 0 && <Groups hers={hers} width={width - INDENT} />}
          {!hers && <p>No record of her own colonies: what is told here comes from her kin.</p>}
          {standing.evaluation.warnings.map((warning) => (
            <p key={warning} class={styles.quiet}>
              {warningWords(warning)}
            </p>
          ))}
          <TraitMethod standing={standing} />
        </div>
      </details>
    </li>
  );
}

/** Width in pixels that the indent under a trait takes. */
const INDENT = 18;

function Figures({ standing }: { readonly standing: TraitStanding }) {
  const { trait, contribution, breedingValue, reliability } = standing;
  if (breedingValue === undefined) return null;
  return (
    <p>
      As a breeder, against the starting stock: <strong>{effectWords(trait.id, breedingValue)}</strong>, with
      a reliability of {percents(reliability ?? 0)}.
      {contribution && ` It adds ${spreads(contribution.points)} to her merit.`}
    </p>
  );
}

function Groups({ hers, width }: { readonly hers: HerTrait; readonly width: number }) {
  const on = useStore().on.value;
  const beside = besides(hers);
  return (
    <>
      {hers.groups.map((group, at) => (
        <TraitGroup key={group.key} trait={hers} group={group} beside={beside[at] ?? ''} width={width} />
      ))}
      <TraitEnds trait={hers} width={width} />
      {hers.aside.length > 0 && (
        <ul class={styles.aside} aria-label={`Set aside: ${TRAIT_TITLES[hers.trait]}`}>
          {hers.aside.map(({ observations, day, sentence }) => (
            <li key={observations.join()}>
              <a href={routes.entry(observations.at(-1) ?? '')}>{shortDay(dayOfNumber(day), on)}</a> set
              aside: {sentence}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
