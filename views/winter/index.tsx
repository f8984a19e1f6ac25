import { useMemo } from 'preact/hooks';
import type { PlainDay } from '../../src/journal/day.ts';
import type { YearSpans } from '../../src/store/settings.ts';
import { useSearchValue } from '../app/location.ts';
import { goInstead, routes, type WintersShown } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { OutcomeOfWinter } from './OutcomeOfWinter.tsx';
import { OverWinters } from './OverWinters.tsx';
import { winterOutcomes } from './outcomes.ts';
import { Ready } from './Ready.tsx';
import styles from './Winters.module.css';

const SHOWN: readonly { readonly value: WintersShown; readonly label: string }[] = [
  { value: 'outcome', label: 'Outcome' },
  { value: 'lines', label: 'Survival' },
  { value: 'ready', label: 'Getting ready' },
];

/** Winter: who came through and who did not, how the lines fare over winters, and what is still to be looked at before one. */
export function Winters() {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const asked = useSearchValue('show');
  const shown =
    SHOWN.find(({ value }) => value === asked)?.value ?? atThisTime(on, store.settings.value.yearSpans);
  const outcomes = useMemo(() => winterOutcomes(registry), [registry]);
  if (registry.colonies.size === 0) {
    return (
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        Who came through each winter, and by which line, will stand here once there are colonies.
      </EmptyState>
    );
  }
  return (
    <article class={styles.page}>
      <PageHeader title="Winters" />
      <div class={styles.choice}>
        <ChoiceRow
          label="What to show"
          hideLabel
          size="quiet"
          required
          options={SHOWN}
          value={shown}
          onChange={(show) => show && goInstead(routes.winters(show))}
        />
        <Button look="quiet" onPress={() => window.print()}>
          Print
        </Button>
      </div>
      {shown === 'outcome' && <OutcomeOfWinter outcomes={outcomes} />}
      {shown === 'lines' && <OverWinters />}
      {shown === 'ready' && <Ready />}
    </article>
  );
}

/** In the weeks of preparation the page opens on it; else on the last winter. */
function atThisTime(on: PlainDay, { autumnPreparation }: YearSpans): WintersShown {
  const inYear = on.slice(5);
  return inYear >= autumnPreparation.from && inYear <= autumnPreparation.to ? 'ready' : 'outcome';
}
