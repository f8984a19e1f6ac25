import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { FrameSizes } from '../../split/planner/FrameSizes.tsx';
import { useStore } from '../store-context.ts';
import { EndOfRecords } from './EndOfRecords.tsx';
import { KeeperName } from './KeeperName.tsx';
import styles from './Settings.module.css';
import { Thresholds } from './Thresholds.tsx';
import { YearOfWork } from './YearOfWork.tsx';

const THEMES = [
  { value: 'system', label: 'As the device' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
] as const;

/** Choices of this device: who writes, what the rounds ask when, the thresholds, light or dark, and the end. */
export function SettingsPage() {
  const store = useStore();
  return (
    <>
      <PageHeader title="Settings" />
      <div class={styles.settings}>
        <div class={styles.column}>
          <KeeperName />
          <ChoiceRow
            label="Light or dark"
            required
            options={THEMES}
            value={store.settings.value.theme}
            onChange={(theme) => theme && store.changeSettings({ theme })}
          />
          <FrameSizes />
          <EndOfRecords />
        </div>
        <div class={styles.column}>
          <Thresholds />
          <YearOfWork />
        </div>
      </div>
    </>
  );
}
