import type { VarianceEstimate } from '../../graph/merit/estimate/reml.ts';
import type { TraitEvaluation } from '../../graph/merit/evaluate.ts';
import { TRAITS } from '../../graph/merit/traits/all-traits.ts';
import type { TraitVariances } from '../../src/store/index.ts';
import type { OwnVariances } from '../../src/store/settings.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import type { Choice } from './use-choice.ts';
import styles from './Variances.module.css';
import {
  COMPONENT_WORDS,
  disagreementWords,
  keptVariances,
  neededWords,
  publishedVariances,
  refusedWords,
  varianceRows,
} from './variance-rows.ts';

type Estimated = Extract<VarianceEstimate, { is: 'estimated' }>;

export interface EstimatesProps {
  readonly choice: Choice;
  readonly answer: readonly TraitVariances[];
  readonly used: (trait: string) => boolean;
  readonly onUse: (trait: string, variances: OwnVariances | undefined) => void;
}

/** What the keeper's own records say of each trait: variances to take or leave, or that they are too few. */
export function Estimates({ choice, answer, used, onUse }: EstimatesProps) {
  const { answer: evaluated, on } = choice.evaluated;
  const needed = neededWords(answer.map(({ estimate }) => estimate));
  return (
    <div class={styles.estimates} aria-live="polite">
      <ul>
        {answer.map(({ trait, estimate }) => {
          const evaluation = evaluated.evaluation.traits.find((each) => each.trait === trait);
          if (estimate.is !== 'estimated' || !evaluation) return null;
          return (
            <Estimate
              key={trait}
              evaluation={evaluation}
              estimate={estimate}
              used={used(trait)}
              onUse={(variances) => onUse(trait, variances && keptVariances(variances, on))}
            />
          );
        })}
      </ul>
      {needed && <p>{needed}</p>}
      <dl class={styles.few}>
        {answer.map(
          ({ trait, estimate }) =>
            estimate.is === 'refused' && (
              <div key={trait}>
                <dt>{TRAIT_TITLES[trait]}</dt>
                <dd>{refusedWords(estimate)}</dd>
              </div>
            ),
        )}
      </dl>
    </div>
  );
}

interface EstimateProps {
  readonly evaluation: TraitEvaluation;
  readonly estimate: Estimated;
  readonly used: boolean;
  readonly onUse: (variances: Estimated['variances'] | undefined) => void;
}

function Estimate({ evaluation, estimate, used, onUse }: EstimateProps) {
  const trait = TRAITS.find(({ id }) => id === evaluation.trait);
  if (!trait) return null;
  return (
    <li>
      <h4>{TRAIT_TITLES[evaluation.trait]}</h4>
      <table>
        <thead>
          <tr>
            <th scope="col">Variance of</th>
            <th scope="col">{trait.variances.status === 'published' ? 'published' : 'assumed'}</th>
            <th scope="col">yours, ± standard error</th>
          </tr>
        </thead>
        <tbody>
          {varianceRows(publishedVariances(trait, evaluation), estimate).map(
            ({ component, published, own }) => (
              <tr key={component}>
                <th scope="row">{COMPONENT_WORDS[component]}</th>
                <td>{published}</td>
                <td>{own}</td>
              </tr>
            ),
          )}
        </tbody>
      </table>
      <p>{disagreementWords(estimate)}</p>
      {estimate.converged && (
        <label class={styles.tick}>
          <input
            type="checkbox"
            checked={used}
            onChange={() => onUse(used ? undefined : estimate.variances)}
          />
          Use mine
        </label>
      )}
    </li>
  );
}
