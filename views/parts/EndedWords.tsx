import { dayText } from '../../src/journal/day-words.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { ColonyLabel } from './ColonyLabel.tsx';
import { LOSS_CAUSES } from './words.ts';

/** That a colony has ended, when and why, and the way to the entry that says so, should it be wrong. */
export function EndedWords({ colony }: { readonly colony: Colony }) {
  const { ended, entries } = colony;
  if (!ended) return null;
  const said = entries.findLast(({ kind }) => kind === 'colony-ended' || kind === 'colonies-joined');
  return (
    <>
      <ColonyLabel colony={colony} /> ended on {dayText(ended.day)}: {LOSS_CAUSES[ended.cause]}.{' '}
      {said && <a href={routes.entry(said.id)}>If that is wrong, take it back</a>}
      {said && '. '}
    </>
  );
}
