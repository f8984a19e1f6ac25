import type { BroodViability } from '../../graph/alleles/viability.ts';
import type { MeritOutlook } from '../../graph/choice/what-if-mating.ts';
import { Button } from '../parts/Button.tsx';
import { percents } from '../parts/percents.ts';
import styles from './KeptMatings.module.css';
import { spreadOf } from './mating.ts';
import { NINE_TENTHS } from './merit-scale.ts';
import type { KeptMating } from './WhatIf.tsx';
import { spreads } from './words.ts';

export interface KeptMatingsProps {
  readonly kept: readonly KeptMating[];
  readonly onForget: () => void;
}

/** Matings looked at before, one under the other. */
export function KeptMatings({ kept, onForget }: KeptMatingsProps) {
  if (kept.length === 0) return null;
  return (
    <div class={styles.kept}>
      <table>
        <thead>
          <tr>
            <th scope="col">Kept in sight, nine times in ten</th>
            <th scope="col">Brood inbred</th>
            <th scope="col">Brood lives</th>
            <th scope="col">Brood’s merit</th>
          </tr>
        </thead>
        <tbody>
          {kept.map(({ words, outlook }) => (
            <tr key={words}>
              <th scope="row">{words}</th>
              <td>{percents(outlook.broodInbreeding)}</td>
              <td>{outlook.viability ? livesWords(outlook.viability) : '–'}</td>
              <td>{outlook.broodMerit ? meritWords(outlook.broodMerit) : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Button look="quiet" onPress={onForget}>
        Forget these
      </Button>
    </div>
  );
}

function livesWords({ mean, low, high }: BroodViability): string {
  return `${percents(mean)} (${Math.round(100 * low)} to ${percents(high)})`;
}

function meritWords(outlook: MeritOutlook): string {
  const reach = NINE_TENTHS * spreadOf(outlook);
  return `${spreads(outlook.mean)} (${spreads(outlook.mean - reach)} to ${spreads(outlook.mean + reach)})`;
}
