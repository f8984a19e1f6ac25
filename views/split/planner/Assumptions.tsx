import { ASSUMPTIONS, type AssumptionName } from '../../../graph/increase/index.ts';
import { Unfold } from '../../parts/Unfold.tsx';
import styles from './Assumptions.module.css';

/** What stands behind the figures: each assumption with its range and where it comes from. */
export function Assumptions() {
  return (
    <Unfold class={styles.assumptions} title="What these figures assume">
      <p>
        No flow, weather, robbing or disease is in them. Each range comes of reckoning with the values that
        leave the fewest and the most bees.
      </p>
      <dl>
        {(Object.keys(ASSUMPTIONS) as AssumptionName[]).map((name) => {
          const { about, low, likely, high, unit, source, basis } = ASSUMPTIONS[name];
          return (
            <div key={name}>
              <dt>{about}</dt>
              <dd>
                <strong>{likely.toLocaleString('en-GB')}</strong>
                {low !== high && ` (${low.toLocaleString('en-GB')} to ${high.toLocaleString('en-GB')})`}{' '}
                {unit}
                <span>
                  {source}; {basis}
                </span>
              </dd>
            </div>
          );
        })}
        <div>
          <dt>open brood on a frame of both ages</dt>
          <dd>
            <strong>9 of 21</strong> parts
            <span>egg and larva are nine of the twenty-one days of a worker; derived</span>
          </dd>
        </div>
      </dl>
    </Unfold>
  );
}
