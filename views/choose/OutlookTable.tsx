import type { SeasonOutlook } from '../../graph/choice/look-ahead/look-ahead.ts';
import { Unfold } from '../parts/Unfold.tsx';
import styles from './OutlookFigures.module.css';
import { FIGURES, rangeWords } from './outlook-words.ts';

/** The figures of a look-ahead season by season. */
export function OutlookTable({ seasons }: { readonly seasons: readonly SeasonOutlook[] }) {
  return (
    <Unfold title="The figures as a table">
      <div class={styles.scroll}>
        <table>
          <thead>
            <tr>
              <th scope="col">Season</th>
              {FIGURES.map(({ figure, title }) => (
                <th key={figure} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {seasons.map((each) => (
              <tr key={each.season}>
                <th scope="row">{each.season === 0 ? 'now' : each.season}</th>
                {FIGURES.map(({ figure, say }) => {
                  const bands = each[figure];
                  return (
                    <td key={figure}>
                      {bands ? (
                        <>
                          <strong>{say(bands.median)}</strong>{' '}
                          <span class={styles.range}>{rangeWords(bands, say)}</span>
                        </>
                      ) : (
                        '–'
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Unfold>
  );
}
