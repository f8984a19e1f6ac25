import type { VarianceEstimate } from '../../graph/merit/estimate/reml.ts';
import type { TraitEvaluation } from '../../graph/merit/evaluate.ts';
import { TRAITS } from '../../graph/merit/traits/all-traits.ts';
import type { OwnVariances } from '../../src/store/settings.ts';
import { Button } from '../parts/Button.tsx';
import { dayText } from '../parts/days.ts';
import { Notice } from '../parts/Notice.tsx';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import type { Choice } from './use-choice.ts';
import { useSetting } from './use-setting.ts';
import { useAskedTask } from './use-task.ts';
import styles from './Variances.module.css';
import {
  COMPONENT_WORDS,
  disagreementWords,
  keptVariances,
  publishedVariances,
  varianceRows,
} from './variance-rows.ts';
import { Progress } from './Waiting.tsx';

/** Variances from the keeper's own records, on request; used only where the keeper says so. */
export function Variances({ choice }: { readonly choice: Choice }) {
  const { work, answer: evaluation, on } = choice.evaluated;
  const [own, setOwn] = useSetting('ownVariances');
  const task = useAskedTask('variances');
  const use = (trait: string, variances: OwnVariances | undefined) => {
    const { [trait]: _, ...others } = own;
    setOwn(variances ? { ...others, [trait]: variances } : others);
  };
  return (
    <div class={styles.variances}>
      <h3>How much is inherited, by your own records</h3>
      <p>
        The variances above are published or assumed. With many records of many queens your own can tell; they
        are offered here and used only if you say so.
      </p>
      {Object.entries(own).map(([trait, { on: day }]) => (
        <p key={trait}>
          In use for {TRAIT_TITLES[trait as TraitEvaluation['trait']]}: your own, estimated on{' '}
          {dayText(day as never)}.{' '}
          <Button look="quiet" onPress={() => use(trait, undefined)}>
            Back to the published
          </Button>
        </p>
      ))}
      <div class={styles.acts}>
        <Button
          disabled={task.busy}
          onPress={() => task.ask({ pedigree: work.pedigree, observations: work.observations })}
        >
          Estimate from my records
        </Button>
        {task.busy && <Button onPress={task.cancel}>Stop</Button>}
      </div>
      {task.busy && <Progress fraction={task.fraction} label="Traits estimated" />}
      {task.problem && (
        <Notice tone="warn" title="They could not be estimated">
          Found: {task.problem}. The published ones stay in use.
        </Notice>
      )}
      <ul class={styles.estimates} aria-live="polite">
        {task.answer?.map(({ trait, estimate }) => {
          const current = evaluation.evaluation.traits.find((each) => each.trait === trait);
          return (
            current && (
              <Estimate
                key={trait}
                evaluation={current}
                estimate={estimate}
                used={own[trait] !== undefined}
                onUse={(variances) => use(trait, variances && keptVariances(variances, on))}
              />
            )
          );
        })}
      </ul>
    </div>
  );
}

interface EstimateProps {
  readonly evaluation: TraitEvaluation;
  readonly estimate: VarianceEstimate;
  readonly used: boolean;
  readonly onUse: (
    variances: Extract<VarianceEstimate, { is: 'estimated' }>['variances'] | undefined,
  ) => void;
}

function Estimate({ evaluation, estimate, used, onUse }: EstimateProps) {
  const trait = TRAITS.find(({ id }) => id === evaluation.trait);
  if (estimate.is === 'refused' || !trait) {
    return (
      <li>
        <h4>{TRAIT_TITLES[evaluation.trait]}</h4>
        <p>{estimate.is === 'refused' ? estimate.sentence : ''}</p>
      </li>
    );
  }
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
