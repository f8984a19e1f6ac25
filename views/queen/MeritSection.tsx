import { routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { finePercents } from '../parts/percents.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import styles from './MeritSection.module.css';
import type { MeritFigures } from './merit-figures.ts';
import queenStyles from './Queen.module.css';
import type { Reasons } from './worth.ts';

export interface MeritSectionProps extends Reasons {
  /** Absent while the evaluation is under way, or where she is not among those evaluated. */
  readonly merit?: MeritFigures | undefined;
  readonly underWay?: boolean;
  readonly inbreeding?: number | undefined;
  readonly broodInbreeding?: number | undefined;
}

/** Is she worth multiplying, and what would hold one back: the evaluation in a figure, the facts in sentences. */
export function MeritSection({ merit, underWay, speaksFor, holdsBack, ...numbers }: MeritSectionProps) {
  return (
    <section class={`${queenStyles.section} ${queenStyles.worth}`} aria-labelledby="worth">
      <h2 id="worth">Worth multiplying?</h2>
      {merit && <Merit merit={merit} />}
      {!merit && underWay && <p class={queenStyles.quiet}>The evaluation is under way.</p>}
      {speaksFor.length > 0 && <ReasonList title="What speaks for it" reasons={speaksFor} />}
      {holdsBack.length > 0 && <ReasonList title="What holds it back" reasons={holdsBack} />}
      <p class={queenStyles.quiet}>{inbreedingWords(numbers.inbreeding, numbers.broodInbreeding)}</p>
      <p class={styles.choose}>
        <Button look="quiet" href={routes.choose()}>
          Beside the others, on Choose
        </Button>
      </p>
    </section>
  );
}

function ReasonList({ title, reasons }: { readonly title: string; readonly reasons: readonly string[] }) {
  return (
    <div>
      <h3>{title}</h3>
      <ul class={styles.reasons}>
        {reasons.map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
    </div>
  );
}

/** Place among the living, the index with its doubt, and which traits it comes of. */
function Merit({ merit }: { readonly merit: MeritFigures }) {
  return (
    <details class={styles.merit}>
      <summary>
        <strong>{merit.placeWords}</strong> <span class={queenStyles.quiet}>{merit.sureWords}</span>
      </summary>
      <ul>
        {merit.parts.map(({ trait, points, sure }) => (
          <li key={trait}>
            <span>{TRAIT_TITLES[trait]}</span>
            <span>{points}</span>
            <span class={queenStyles.quiet}>{sure}</span>
          </li>
        ))}
      </ul>
      <p class={queenStyles.quiet}>{merit.figureWords}</p>
    </details>
  );
}

function inbreedingWords(inbreeding: number | undefined, brood: number | undefined): string {
  if (inbreeding === undefined)
    return 'The records contradict themselves, so that her inbreeding cannot be told.';
  const hers =
    brood === undefined
      ? '; whom she mated with is not known yet'
      : `, that of her brood ${finePercents(brood)}`;
  return `Her expected inbreeding is ${finePercents(inbreeding)}${hers}. Drones of mothers nobody recorded count as drawn from the background.`;
}
