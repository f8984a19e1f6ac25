import type { RoughDay } from '../../../src/journal/day.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import type { Colony } from '../../../src/registry/state.ts';
import { useStore } from '../../app/store-context.ts';
import { lowestThreshold, setAsideBy } from '../../mites/counts.ts';
import { againstMites } from '../../mites/treatments.ts';
import { asideWords } from '../../mites/words.ts';
import { figureWords, miteFigure } from '../../parts/entries/mite-words.ts';
import { IntervalBar } from '../../parts/IntervalBar.tsx';
import styles from './MiteResult.module.css';

export interface MiteResultProps {
  readonly colony: Colony;
  readonly day: RoughDay;
  readonly sample: EntryOf<'mite-count'>['sample'];
}

/** What the count says before it is saved: the figure with its limits, beside the keeper's threshold. */
export function MiteResult({ colony, day, sample }: MiteResultProps) {
  const { settings, registry, on } = useStore();
  const figure = miteFigure(sample);
  const threshold = lowestThreshold(settings.value.miteThresholds, { day, sample });
  const setAside = setAsideBy(againstMites(registry.value, colony), day);
  return (
    <div class={styles.result}>
      <p class={styles.figure}>{figureWords(figure)}</p>
      <IntervalBar
        label={sample.method === 'natural-drop' ? 'Mites a day' : 'Of the bees on the comb'}
        low={figure.low}
        high={figure.high}
        value={sample.mites > 0 ? figure.value : undefined}
        max={Math.max(figure.high * 1.1, (threshold?.value ?? 0) * 1.5, figure.unit === '%' ? 5 : 10)}
        unit={figure.unit}
        threshold={
          threshold && { value: threshold.value, label: `Your threshold (${threshold.jurisdiction})` }
        }
      />
      {setAside && <p>{asideWords(setAside, on.value)}</p>}
    </div>
  );
}
