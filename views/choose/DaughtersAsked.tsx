import { SelectField } from '../parts/SelectField.tsx';
import { Count } from './Count.tsx';
import styles from './DaughtersAsked.module.css';
import type { Choice } from './use-choice.ts';

const MOST = 300;

/** What the keeper wants: how many daughters, how many from one queen at most, flown where, how related at most. */
export function DaughtersAsked({ choice }: { readonly choice: Choice }) {
  const { choosing, setChoosing, evaluated } = choice;
  const { daughters, mostEach, droneKinshipLimit, kinshipLimit, flownAt } = choosing;
  const yards = evaluated.work.yards.map(({ yard }) => ({
    value: yard as string,
    label: choice.yardName(yard),
  }));
  return (
    <div class={styles.asked}>
      <Count
        label="Daughters wanted"
        value={daughters}
        min={1}
        max={MOST}
        onChange={(value = daughters) => setChoosing({ daughters: value })}
      />
      <Count
        label="At most from one queen"
        value={mostEach}
        min={1}
        max={MOST}
        onChange={(value = mostEach) => setChoosing({ mostEach: value })}
      />
      <Count
        label="Inbreeding of their brood, at most"
        unit="%"
        value={droneKinshipLimit === undefined ? undefined : Math.round(100 * droneKinshipLimit)}
        min={0}
        max={50}
        none="no limit"
        onChange={(value) =>
          setChoosing({ droneKinshipLimit: value === undefined ? undefined : value / 100 })
        }
      />
      <Count
        label="Kinship between their dams, at most"
        unit="%"
        value={kinshipLimit === undefined ? undefined : Math.round(100 * kinshipLimit)}
        min={0}
        max={100}
        none="no limit"
        onChange={(value) => setChoosing({ kinshipLimit: value === undefined ? undefined : value / 100 })}
      />
      <SelectField
        label="Flown at"
        value={yards.some(({ value }) => value === flownAt) ? flownAt : undefined}
        none="Each where she meets least kin"
        options={yards}
        onChange={(value) => setChoosing({ flownAt: value })}
      />
    </div>
  );
}
