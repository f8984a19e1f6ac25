import type { TraitId } from '../../graph/merit/traits/trait.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { OwnVariances } from '../../src/store/settings.ts';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { Progress } from '../parts/Progress.tsx';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { useAskedTask } from '../parts/use-task.ts';
import { Estimates } from './Estimates.tsx';
import type { Choice } from './use-choice.ts';
import { useSetting } from './use-setting.ts';
import styles from './Variances.module.css';

/** Variances from the keeper's own records, on request; used only where the keeper says so. */
export function Variances({ choice }: { readonly choice: Choice }) {
  const { work } = choice.evaluated;
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
          In use for {TRAIT_TITLES[trait as TraitId]}: your own, estimated on {dayText(day as never)}.{' '}
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
      {task.answer && (
        <Estimates
          choice={choice}
          answer={task.answer}
          used={(trait) => own[trait] !== undefined}
          onUse={use}
        />
      )}
    </div>
  );
}
