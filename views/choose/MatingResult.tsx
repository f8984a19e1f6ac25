import type { MatingOutlook, MeritOutlook } from '../../graph/choice/what-if-mating.ts';
import { percents } from '../parts/percents.ts';
import { ShareInterval } from '../parts/ShareInterval.tsx';
import styles from './MatingResult.module.css';
import { MeritAxis, MeritBar } from './MeritBar.tsx';
import { spreadOf } from './mating.ts';
import { meritScale } from './merit-scale.ts';
import { chanceWords, spreads } from './words.ts';

export interface MatingResultProps {
  readonly outlook: MatingOutlook;
  /** Effective mates it was worked out for. */
  readonly mates: number;
}

/** What would come of a mating: inbreeding, brood that lives, merit, each with its spread. */
export function MatingResult({ outlook, mates }: MatingResultProps) {
  const { inbreeding, broodInbreeding, viability, queenMerit, broodMerit } = outlook;
  const merits = [
    ...(queenMerit ? [{ label: 'The daughter as a breeder', outlook: queenMerit }] : []),
    ...(broodMerit ? [{ label: 'Her brood', outlook: broodMerit }] : []),
  ];
  const scale = meritScale(
    merits.map((each) => ({ merit: each.outlook.mean, error: spreadOf(each.outlook) })),
  );
  return (
    <div class={styles.result}>
      <p>
        Her brood is expected <strong>{percents(broodInbreeding)} inbred</strong>; she herself{' '}
        {percents(inbreeding)}, whoever she meets.
      </p>
      {viability && (
        <div>
          <ShareInterval label="Brood that lives, nine times in ten" share={viability} from={0.5} />
          <p class={styles.quiet}>
            Scale from 50 to 100&nbsp;%. The chance that not one of{' '}
            {mates === 1 ? 'her mates' : `her ${mates} mates`} matches her is {chanceWords(viability.noMatch)}
            .
          </p>
        </div>
      )}
      {merits.length > 0 && (
        <div class={styles.merits}>
          <MeritAxis scale={scale} />
          {merits.map((each) => (
            <div key={each.label}>
              <p class={styles.words}>
                <span>{each.label}</span> <strong>{spreads(each.outlook.mean)}</strong>
              </p>
              <MeritBar merit={each.outlook.mean} error={spreadOf(each.outlook)} scale={scale} />
              <p class={styles.quiet}>{doubtWords(each.outlook)}</p>
            </div>
          ))}
        </div>
      )}
    </div>
  );
}

function doubtWords({ betweenSisters, standardError }: MeritOutlook): string {
  const chance = `Sisters raised and mated alike differ by ${spreads(betweenSisters).slice(1)}`;
  if (standardError === undefined) return `${chance}; how well the mean is known is not told.`;
  return `${chance}; the mean is known to ${spreads(standardError).slice(1)} (one standard error each). Both are in the bands.`;
}
