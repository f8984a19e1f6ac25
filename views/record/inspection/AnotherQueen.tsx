import { queenTitle } from '../../../src/registry/queries.ts';
import { ChoiceRow } from '../../parts/ChoiceRow.tsx';
import type { FollowUpsProps } from './FollowUps.tsx';

/** An unmarked queen where a marked one is known: asked beside the sight itself, for below the fold it goes unseen. */
export function AnotherQueen({ look, head, onLook }: FollowUpsProps) {
  if (look.seen.queenSeen !== 'seen-unmarked' || head?.mark === undefined) return null;
  return (
    <ChoiceRow
      label={`${queenTitle(head)} was marked. Is this another queen?`}
      size="hive"
      hint="Probably her daughter by supersedure; the old queen then counts as gone, by deduction."
      options={[
        { value: 'yes', label: 'Another queen' },
        { value: 'no', label: 'She lost her mark' },
      ]}
      value={look.another === undefined ? undefined : look.another ? 'yes' : 'no'}
      onChange={(answer) => onLook({ another: answer === undefined ? undefined : answer === 'yes' })}
    />
  );
}
