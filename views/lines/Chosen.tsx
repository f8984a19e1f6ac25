import type { QueenId } from '../../src/journal/ids.ts';
import { routes } from '../app/routes.ts';
import { useRegistry } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { sentence } from '../parts/words.ts';
import spoken from '../style/spoken.module.css';
import styles from './Chosen.module.css';
import { DroneWords } from './DroneWords.tsx';
import type { DroneSources } from './drone-sources.ts';
import type { FamilyShown } from './family.ts';
import { LineMark } from './LineMark.tsx';
import type { Life } from './lives.ts';
import type { LineSummary } from './summaries.ts';
import { damText, fateText, wintersText } from './words.ts';

export interface ChosenProps {
  readonly life: Life;
  readonly line: LineSummary | undefined;
  readonly shown: FamilyShown | undefined;
  readonly onShow: (shown: FamilyShown | undefined) => void;
  readonly drones: DroneSources | undefined;
  readonly dronesShown: boolean;
  readonly onDrones: (shown: boolean) => void;
  readonly comparing: boolean;
  readonly onCompare: (comparing: boolean) => void;
  readonly onClose: () => void;
}

const FAMILY: readonly { readonly value: FamilyShown; readonly label: string }[] = [
  { value: 'ancestors', label: 'Ancestors' },
  { value: 'descendants', label: 'Descent' },
  { value: 'both', label: 'Both' },
];

/** The queen chosen in the drawing: who she is, and what to show of her. */
export function Chosen(props: ChosenProps) {
  const { life, line, shown } = props;
  const registry = useRegistry();
  const nameOf = (id: QueenId) => registry.queens.get(id)?.name ?? 'an unnamed queen';
  return (
    <div class={styles.chosen}>
      <div class={styles.head}>
        {line && <LineMark letter={line.letter} hue={line.hue} />}
        <p class={styles.name}>
          <QueenName queen={life.id} />
        </p>
        <button type="button" class={styles.close} onClick={props.onClose} aria-label="Choose nobody">
          ×
        </button>
      </div>
      <p class={styles.about}>
        {sentence(fateText(life))}; {damText(life, nameOf)}.{' '}
        {life.winters.length > 0 ? `Crossed ${wintersText(life.winters)}.` : 'No winter crossed yet.'}
      </p>

      <fieldset class={styles.family}>
        <legend class={spoken.only}>Show of her kin</legend>
        {FAMILY.map(({ value, label }) => (
          <button
            key={value}
            type="button"
            aria-pressed={shown === value}
            onClick={() => props.onShow(shown === value ? undefined : value)}
          >
            {label}
          </button>
        ))}
        {props.drones && (
          <button
            type="button"
            aria-pressed={props.dronesShown}
            onClick={() => props.onDrones(!props.dronesShown)}
          >
            Drones met
          </button>
        )}
      </fieldset>
      {props.dronesShown && props.drones && <DroneWords drones={props.drones} />}
      <div class={styles.actions}>
        <Button href={routes.queen(life.id)} look="main">
          Her page
        </Button>
        <Button pressed={props.comparing} onPress={() => props.onCompare(!props.comparing)}>
          {props.comparing ? 'Now choose the other' : 'Compare'}
        </Button>
      </div>
    </div>
  );
}
