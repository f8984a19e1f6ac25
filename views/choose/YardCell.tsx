import { percents } from '../parts/percents.ts';
import { oneIn } from './words.ts';
import styles from './YardCell.module.css';
import type { YardRisk } from './yard-risk.ts';

/** Inbreeding that fills the bar: that of a queen mated with her own sons. */
const FULL = 0.25;

export interface YardCellProps {
  readonly risk: YardRisk;
  readonly best: boolean;
}

/** What daughters meet at one yard: inbreeding of their brood, how much of it lives, and whether brothers fly. */
export function YardCell({ risk, best }: YardCellProps) {
  const { broodInbreeding, viability, brothers, closeness } = risk;
  return (
    <span class={styles.cell}>
      <span class={styles.figure}>
        <strong class={closeness === 'closely' ? styles.close : undefined}>
          {percents(broodInbreeding)}
        </strong>
        {best && (
          <span class={styles.best} role="img" aria-label="meets least kin here">
            ●
          </span>
        )}
      </span>
      <span class={styles.scale} aria-hidden="true">
        <span style={{ width: `${Math.min(100, (100 * broodInbreeding) / FULL)}%` }} />
      </span>
      {viability && (
        <span class={styles.small}>
          {percents(viability.mean)} lives{' '}
          <span class={styles.range}>
            ({Math.round(100 * viability.low)} to {percents(viability.high)})
          </span>
        </span>
      )}
      {brothers > 0 ? (
        <span class={styles.small}>brothers {oneIn(brothers)}</span>
      ) : (
        <span class={`${styles.small} ${styles.none}`}>no brothers</span>
      )}
    </span>
  );
}
