import { useId } from 'preact/hooks';
import type { TraitId } from '../../graph/merit/traits/trait.ts';
import { SUGGESTED_WEIGHTS } from '../../src/store/trait-weights.ts';
import { Button } from '../parts/Button.tsx';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { number } from '../parts/words.ts';
import type { Choice } from './use-choice.ts';
import styles from './Weights.module.css';

const MOST = 5;

/** What counts, and how much: a weight for each trait. The ranking follows the hand. */
export function Weights({ choice }: { readonly choice: Choice }) {
  const { weights, setWeights, evaluated } = choice;
  const moved = Object.entries(SUGGESTED_WEIGHTS).some(
    ([trait, weight]) => weights[trait as TraitId] !== weight,
  );
  return (
    <div class={styles.weights}>
      {evaluated.answer.evaluation.traits.map(({ trait, records }) => (
        <Weight
          key={trait}
          trait={trait}
          value={weights[trait] ?? 0}
          recorded={records.length > 0}
          onChange={(weight) => setWeights({ ...weights, [trait]: weight })}
        />
      ))}
      {moved && (
        <Button look="quiet" onPress={() => setWeights({})}>
          As suggested
        </Button>
      )}
    </div>
  );
}

interface WeightProps {
  readonly trait: TraitId;
  readonly value: number;
  readonly recorded: boolean;
  readonly onChange: (value: number) => void;
}

function Weight({ trait, value, recorded, onChange }: WeightProps) {
  const id = useId();
  const out = value === 0;
  return (
    <div class={styles.weight}>
      <label for={id} class={out ? styles.out : undefined}>
        {TRAIT_TITLES[trait]}
        {!recorded && <span class={styles.nothing}> nothing to compare yet</span>}
      </label>
      <output for={id} class={out ? styles.out : undefined}>
        {out ? 'out' : number(value)}
      </output>
      <input
        id={id}
        type="range"
        min="0"
        max={MOST}
        step="0.5"
        value={value}
        aria-valuetext={out ? 'left out' : `${number(value)} of ${MOST}`}
        onInput={(event) => onChange(Number(event.currentTarget.value))}
      />
    </div>
  );
}
