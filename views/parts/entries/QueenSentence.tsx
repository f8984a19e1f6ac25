import { dayText } from '../../../src/journal/day-words.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import { assertNever } from '../../../src/journal/problems.ts';
import { ColonyLabel } from '../ColonyLabel.tsx';
import { MarkDot } from '../MarkDot.tsx';
import { QueenName } from '../QueenName.tsx';
import { CELL_REASONS, EVIDENCE, QUEEN_LOSSES, sentence } from '../words.ts';
import { Dam } from './IncreaseSentence.tsx';
import { MatingWords } from './MatingWords.tsx';

type QueenKinds =
  | 'queen-entered'
  | 'queen-expected'
  | 'queen-found'
  | 'queen-confirmed'
  | 'queen-marked'
  | 'queen-named'
  | 'queen-lost'
  | 'queen-moved'
  | 'parentage-stated'
  | 'mating';

const SEEN = { eggs: 'eggs', 'worker-brood': 'worker brood', 'queen-laying': 'seen laying' } as const;
const HOW = { caged: ', caged', direct: ', directly', 'with-her-frame': ', with her frame' } as const;

export function QueenSentence({ entry }: { readonly entry: EntryOf<QueenKinds> }) {
  const her = <QueenName queen={entry.queen} />;
  switch (entry.kind) {
    case 'queen-entered':
      return (
        <>
          {her}
          {entry.parentage && entry.parentage.dams.length > 0 && (
            <>
              , daughter of <Dam parentage={entry.parentage} />
            </>
          )}
          {entry.born && `, emerged ${dayText(entry.born)}`}
          {entry.from && `, from ${entry.from}`}
          {entry.background && `, of ${entry.background}`}.
        </>
      );
    case 'queen-expected':
      return (
        <>
          {sentence(CELL_REASONS[entry.reason])} found; {her}.
        </>
      );
    case 'queen-found':
      return (
        <>
          {her} found
          {entry.insteadOf && (
            <>
              {' '}
              where <QueenName queen={entry.insteadOf} /> was known
            </>
          )}
          .
        </>
      );
    case 'queen-confirmed':
      return (
        <>
          {her} lays: {SEEN[entry.seen]}.
        </>
      );
    case 'queen-marked':
      return (
        <>
          {her} marked <MarkDot colour={entry.colour} number={entry.mark} />
          {entry.clipped && ', wing clipped'}.
        </>
      );
    case 'queen-named':
      return <>Named {entry.name}.</>;
    case 'queen-lost':
      return (
        <>
          {her}: {QUEEN_LOSSES[entry.cause]}
          {entry.to && ` to ${entry.to}`}.
        </>
      );
    case 'queen-moved':
      return (
        <>
          {her} put into <ColonyLabel colony={entry.to} />
          {entry.how && HOW[entry.how]}.
        </>
      );
    case 'parentage-stated':
      return (
        <>
          {her} is a daughter of <Dam parentage={entry.parentage} />: {EVIDENCE[entry.parentage.evidence]}.
        </>
      );
    case 'mating':
      return (
        <>
          {her} <MatingWords entry={entry} />.
        </>
      );
    default:
      return assertNever(entry);
  }
}
