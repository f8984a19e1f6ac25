import { goInstead, routes } from '../../app/routes.ts';
import { type OpenIncoming, opened, takenIn } from '../incoming.ts';
import { TableIntake } from '../table/TableIntake.tsx';
import { useFromTop } from '../use-from-top.ts';
import { FileProblems } from './FileProblems.tsx';
import { JournalIntake } from './JournalIntake.tsx';

/** What came in, looked through before anything is written. */
export function IncomingPage({ open }: { readonly open: OpenIncoming }) {
  const { incoming, work } = open;
  useFromTop();
  if (incoming.is === 'refused') return <FileProblems incoming={incoming} onAway={putAway} />;
  if (incoming.is === 'journal') {
    return <JournalIntake key={incoming.name} incoming={incoming} onAway={putAway} onTaken={taken} />;
  }
  if (!work) return null;
  return (
    <TableIntake
      name={incoming.name}
      table={incoming.table}
      work={work}
      onWork={(next) => {
        opened.value = { ...open, work: next };
      }}
      onAway={putAway}
      onTaken={taken}
    />
  );
}

function putAway(): void {
  opened.value = undefined;
  goInstead(routes.exchange());
}

function taken(words: string): void {
  takenIn.value = words;
  putAway();
}
