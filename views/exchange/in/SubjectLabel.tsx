import type { Entry } from '../../../src/journal/entry.ts';
import { useStore } from '../../app/store-context.ts';
import { ColonyLabel } from '../../parts/ColonyLabel.tsx';
import { QueenName } from '../../parts/QueenName.tsx';

/** What an entry is about, where its sentence does not name it: most are read on the page of their box. */
export function SubjectLabel({ entry }: { readonly entry: Entry }) {
  const { registry } = useStore();
  if (entry.kind === 'note') {
    const { about } = entry;
    if (about?.of === 'colony') return <ColonyLabel colony={about.colony} />;
    if (about?.of === 'queen') return <QueenName queen={about.queen} />;
    return <>{about && registry.value.yards.get(about.yard)?.name}</>;
  }
  if (entry.kind === 'queen-named') return <QueenName queen={entry.queen} />;
  if (!('colony' in entry) || !entry.colony || entry.kind === 'colonies-joined') return null;
  return <ColonyLabel colony={entry.colony} />;
}
