import { useMemo } from 'preact/hooks';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { ByLine } from './ByLine.tsx';
import { Cautions } from './Cautions.tsx';
import { CountList } from './CountList.tsx';
import { leadWords } from './lead.ts';
import styles from './Mites.module.css';
import { MyThresholds } from './MyThresholds.tsx';
import { NotCounted } from './NotCounted.tsx';
import { Running } from './Running.tsx';
import { recentlyCounted, survey } from './survey.ts';
import { TreatmentLog } from './TreatmentLog.tsx';

/** Mites across the colonies: what the last counts can tell, what is in the hives, what is due. */
export function Mites() {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const settings = store.settings.value;
  const all = useMemo(() => survey(registry, on, settings), [registry, on, settings]);
  const { counted, others } = recentlyCounted(all, on);
  if (all.length === 0) {
    return (
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        The last mite count of each colony will stand here with what it can tell, once there is a colony.
      </EmptyState>
    );
  }
  return (
    <>
      <PageHeader
        title="Mites"
        lead={leadWords(counted, others.length, settings.miteThresholds.length > 0)}
        actions={
          <>
            <Button look="main" href={routes.recordWhere()}>
              Record a count
            </Button>
            <Button onPress={() => window.print()}>Print</Button>
          </>
        }
      />
      <div class={styles.page}>
        <div class={styles.main}>
          <Running />
          {counted.length > 0 && <CountList counted={counted} />}
          {others.length > 0 && <NotCounted others={others} />}
          <ByLine />
          <TreatmentLog />
        </div>
        <div class={styles.side}>
          <MyThresholds />
          <Cautions />
        </div>
      </div>
    </>
  );
}
