import { routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import styles from './Compare.module.css';
import { comparisonRows, verdictWords } from './comparison.ts';
import { LineOf } from './LineOf.tsx';
import { MeritBar } from './MeritBar.tsx';
import { meritScale } from './merit-scale.ts';
import type { Choice } from './use-choice.ts';
import { spreads } from './words.ts';

/** Why her and not the other: two or three queens side by side. */
export function Compare({ choice, queens }: { readonly choice: Choice; readonly queens: readonly string[] }) {
  const rows = choice.ranking.rows.filter(({ id }) => queens.includes(id)).slice(0, 3);
  const above = { label: 'Choose', href: routes.choose() };
  if (rows.length < 2) {
    return (
      <PageHeader
        title="Side by side"
        above={above}
        lead="Of the queens named here fewer than two lay today."
        actions={<Button href={routes.choose()}>Choose others</Button>}
      />
    );
  }
  const scale = meritScale(rows);
  return (
    <>
      <PageHeader title="Side by side" above={above} lead={verdictWords(choice, rows)} />
      <table class={styles.table} style={{ '--queens': rows.length }}>
        <thead>
          <tr>
            <td />
            {rows.map((row) => (
              <th key={row.id} scope="col">
                <span class={styles.who}>
                  <QueenName queen={row.queen} hideMark />
                  {row.colony && <ColonyLabel colony={row.colony} />}
                  <LineOf line={row.line} lines={choice.lines.lines} />
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Merit, in spreads</th>
            {rows.map((row) => (
              <td key={row.id}>
                <MeritBar merit={row.merit} error={row.error} scale={scale} />
                {spreads(row.merit)}, give or take {spreads(row.error).slice(1)}
              </td>
            ))}
          </tr>
          {comparisonRows(choice, rows).map(({ label, cells }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {cells.map((cell, at) => (
                <td key={rows[at]?.id}>
                  {cell.figure && <strong class={styles.figure}>{cell.figure}</strong>} {cell.words}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
