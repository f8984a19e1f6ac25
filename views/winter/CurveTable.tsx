import type { SurvivalCurve } from '../../graph/merit/survival/kaplan-meier.ts';
import { Unfold } from '../parts/Unfold.tsx';
import styles from './CurveTable.module.css';

export interface CurveTableProps {
  /** What a row is of: Line, Yard. */
  readonly of: string;
  readonly curves: readonly { readonly name: string; readonly curve: SurvivalCurve }[];
}

/** The curves in a table: the twin of the drawings. */
export function CurveTable({ of, curves }: CurveTableProps) {
  return (
    <Unfold class={styles.twin} title="The same as a table">
      <div class={styles.wide}>
        <table>
          <thead>
            <tr>
              <th scope="col">{of}</th>
              <th scope="col">Winter</th>
              <th scope="col">Faced it</th>
              <th scope="col">Lost in it</th>
              <th scope="col">Watched no longer</th>
              <th scope="col">Share left</th>
              <th scope="col">95 % limits</th>
            </tr>
          </thead>
          <tbody>
            {curves.flatMap(({ name, curve }) =>
              curve.steps.map(({ time, atRisk, deaths, lastSeen, survival, low, high }, at) => (
                <tr key={`${name} ${time}`}>
                  <th scope="row">{at === 0 ? name : ''}</th>
                  <td>{time}</td>
                  <td>{atRisk}</td>
                  <td>{deaths}</td>
                  <td>{lastSeen}</td>
                  <td>{Math.round(100 * survival)} %</td>
                  <td>
                    {low === undefined || high === undefined
                      ? 'none left'
                      : `${Math.round(100 * low)} to ${Math.round(100 * high)} %`}
                  </td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </div>
    </Unfold>
  );
}
