import { wintersCrossed } from '../../src/registry/winters-of-queen.ts';
import { wintersText } from '../lines/words.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { lastStrength } from '../parts/colony-facts.ts';
import { shortDay } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { count, sentence } from '../parts/words.ts';
import type { Candidate } from './ranking.ts';
import type { Choice } from './use-choice.ts';

/** Who she is in a line: name, mark, box, yard, winters crossed, strength as last seen. */
export function HeadLineOf({ row, choice }: { readonly row: Candidate; readonly choice: Choice }) {
  const { registry, on } = choice.evaluated;
  const colony = row.colony && registry.colonies.get(row.colony);
  const strength = colony && lastStrength(colony, on);
  const winters = wintersCrossed(row.queen, on);
  return (
    <p>
      <QueenName queen={row.queen} />
      {colony && (
        <>
          {' '}
          in <ColonyLabel colony={colony} />
        </>
      )}
      {row.yard && ` at ${choice.yardName(row.yard)}`}.{' '}
      {winters.length > 0 ? sentence(`crossed ${wintersText(winters)}.`) : 'No winter crossed yet.'}{' '}
      {strength && `${count(strength.frames, 'frame')} of bees on ${shortDay(strength.day, on)}.`}
    </p>
  );
}
