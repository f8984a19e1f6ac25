import type { QueenId } from '../../src/journal/ids.ts';
import { routes } from '../app/routes.ts';
import { useRegistry } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { Actions } from './Actions.tsx';
import { Daughters } from './Daughters.tsx';
import { Family } from './Family.tsx';
import { History } from './History.tsx';
import { MeritSection } from './MeritSection.tsx';
import { Origin } from './Origin.tsx';
import styles from './Queen.module.css';
import { QueenHeader } from './QueenHeader.tsx';
import { Tenures } from './Tenures.tsx';
import { Traits } from './Traits.tsx';
import { useWorth } from './use-worth.ts';

/** A queen: who she is and how sure, how she was made, where she has been, what her colonies and daughters do. */
export function QueenPage({ id }: { readonly id?: string }) {
  const registry = useRegistry();
  const queen = registry.queens.get(id as QueenId);
  if (!queen) {
    return (
      <PageHeader
        title="This queen is not in these records"
        lead="She may belong to other records, or was not known yet on the day shown."
        actions={<Button href={routes.lines()}>To the lines</Button>}
      />
    );
  }
  return (
    <>
      <QueenHeader key={queen.id} queen={queen} />
      <div class={styles.page}>
        <div class={styles.main}>
          <Family queen={queen} />
          <Tenures queen={queen} />
          <Traits queen={queen} />
          <History queen={queen} />
        </div>
        <div class={styles.side}>
          <Origin queen={queen} />
          <Worth queen={queen} />
          <Daughters queen={queen} />
          <Actions queen={queen} />
        </div>
      </div>
    </>
  );
}

function Worth({ queen }: { readonly queen: Parameters<typeof useWorth>[0] }) {
  return <MeritSection {...useWorth(queen)} />;
}
