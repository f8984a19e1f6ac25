import { Button } from '../parts/Button.tsx';
import styles from './KeptMatings.module.css';
import type { KeptMating } from './WhatIf.tsx';
import { percents, spreads } from './words.ts';

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
            <th scope="col">Kept in sight</th>
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
              <td>{outlook.viability ? percents(outlook.viability.mean) : '–'}</td>
              <td>{outlook.broodMerit ? spreads(outlook.broodMerit.mean) : '–'}</td>
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
