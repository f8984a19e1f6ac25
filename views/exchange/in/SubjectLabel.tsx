import type { Entry } from '../../../src/journal/entry.ts';
import { ColonyLabel } from '../../parts/ColonyLabel.tsx';

/** The box an entry is about, where its sentence does not name it: those are read on the page of the box. */
export function SubjectLabel({ entry }: { readonly entry: Entry }) {
  if (!('colony' in entry) || !entry.colony) return null;
  if (entry.kind === 'colonies-joined') return null;
  return <ColonyLabel colony={entry.colony} />;
}
