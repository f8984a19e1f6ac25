import type { BreedingPolicy } from '../../graph/choice/look-ahead/policy.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { Unfold } from '../parts/Unfold.tsx';
import { Count } from './Count.tsx';
import styles from './PolicyForm.module.css';
import type { Outlook } from './policy.ts';

export interface PolicyFormProps {
  readonly outlook: Outlook;
  readonly onChange: (outlook: Outlook) => void;
}

/** A way of breeding, season after season. It starts from what the records tell of the keeper's own. */
export function PolicyForm({ outlook, onChange }: PolicyFormProps) {
  const { policy, seasons } = outlook;
  const set = (change: Partial<BreedingPolicy>) => onChange({ ...outlook, policy: { ...policy, ...change } });
  const whole = (label: string, key: 'breeders' | 'daughtersEach' | 'colonies', min: number) => (
    <Count
      label={label}
      value={policy[key]}
      min={min}
      max={200}
      onChange={(value = policy[key]) => set({ [key]: value })}
    />
  );
  return (
    <div class={styles.form}>
      {whole('Queens bred from each season', 'breeders', 1)}
      {whole('Daughters begun from each', 'daughtersEach', 0)}
      {whole('Colonies kept', 'colonies', 1)}
      <Share label="Own drones among those met" policy={policy} name="ownDrones" set={set} />
      <Share label="Colonies lost each winter" policy={policy} name="winterLoss" set={set} />
      <Count
        label="Seasons"
        value={seasons}
        min={1}
        max={30}
        onChange={(value = seasons) => onChange({ ...outlook, seasons: value })}
      />
      <Unfold class={styles.more} title="More of how it goes">
        <Share label="Daughters begun that come to lay" policy={policy} name="success" set={set} />
        <Share label="Old queens replaced each season" policy={policy} name="requeened" set={set} />
        <Share label="How well merit is known" policy={policy} name="reliability" set={set} />
        <Share label="How far merit decides a winter" policy={policy} name="winterOnMerit" set={set} />
        <Count
          label="Most bred from out of one line"
          value={policy.mostPerLine}
          min={1}
          max={50}
          none="no limit"
          onChange={(value) => onChange({ ...outlook, policy: withMostPerLine(policy, value) })}
        />
        <ChoiceRow
          label="Own drones come from"
          required
          value={policy.droneMothers}
          options={[
            { value: 'all', label: 'all colonies' },
            { value: 'breeders', label: 'those bred from' },
          ]}
          onChange={(droneMothers) => droneMothers && set({ droneMothers })}
        />
      </Unfold>
    </div>
  );
}

interface ShareProps {
  readonly label: string;
  readonly policy: BreedingPolicy;
  readonly name: 'ownDrones' | 'winterLoss' | 'success' | 'requeened' | 'reliability' | 'winterOnMerit';
  readonly set: (change: Partial<BreedingPolicy>) => void;
}

function Share({ label, policy, name, set }: ShareProps) {
  const percent = Math.round(100 * policy[name]);
  return (
    <Count
      label={label}
      unit="%"
      value={percent}
      min={0}
      max={100}
      step={5}
      onChange={(value = percent) => set({ [name]: value / 100 })}
    />
  );
}

function withMostPerLine(policy: BreedingPolicy, value: number | undefined): BreedingPolicy {
  const { mostPerLine: _, ...rest } = policy;
  return value === undefined ? rest : { ...rest, mostPerLine: value };
}
