import { routes } from '../../app/routes.ts';
import { Button } from '../../parts/Button.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { counted } from '../counted.ts';
import styles from './Incoming.module.css';
import { ProblemList } from './ProblemList.tsx';
import type { Incoming } from './read-incoming.ts';

export interface FileProblemsProps {
  readonly incoming: Extract<Incoming, { readonly is: 'refused' }>;
  readonly onAway: () => void;
}

/** A file that cannot be taken in: every problem with its line, what was found, and the way out. */
export function FileProblems({ incoming: { name, problems }, onAway }: FileProblemsProps) {
  return (
    <>
      <PageHeader
        title="This cannot be taken in"
        above={{ label: 'Exchange', href: routes.exchange() }}
        lead={`${name}: ${counted(problems.length, 'problem')}. Nothing was written; your records are as they were.`}
      />
      <div class={styles.page}>
        <ProblemList problems={problems} />
        <div>
          <Button look="main" onPress={onAway}>
            Put it away
          </Button>
        </div>
      </div>
    </>
  );
}
