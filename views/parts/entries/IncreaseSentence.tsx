import type { CellAge, SplitPart } from '../../../src/journal/entries/increase.ts';
import type { EntryOf } from '../../../src/journal/entry.ts';
import type { Parentage } from '../../../src/journal/entry-parts.ts';
import { assertNever } from '../../../src/journal/problems.ts';
import { ColonyLabel } from '../ColonyLabel.tsx';
import { QueenName } from '../QueenName.tsx';
import { frameText } from '../words.ts';
import { ofKinds } from './kinds.ts';

type IncreaseKinds = 'split' | 'cells-given' | 'eggs-given' | 'graft';
export const isIncrease = ofKinds<IncreaseKinds>('split', 'cells-given', 'eggs-given', 'graft');

const AGES: Readonly<Record<CellAge, string>> = {
  open: 'open cells',
  capped: 'capped cells',
  emerging: 'cells about to emerge',
  unknown: 'cells',
};

const RAISED_FROM = {
  eggs: 'eggs',
  'young-brood': 'young brood',
  'open-cells': 'open cells',
  'capped-cells': 'capped cells',
} as const;

export function IncreaseSentence({ entry }: { readonly entry: EntryOf<IncreaseKinds> }) {
  switch (entry.kind) {
    case 'split':
      return (
        <>
          <ColonyLabel colony={entry.source} /> split.{' '}
          {entry.parts.map((part) => (
            <span key={part.colony}>
              <ColonyLabel colony={part.colony} /> <PartWords part={part} />.{' '}
            </span>
          ))}
        </>
      );
    case 'cells-given':
      return (
        <>
          {entry.cells ? `${entry.cells} ` : ''}
          {AGES[entry.age]} of <Dam parentage={entry.parentage} /> given to <ColonyLabel colony={entry.to} />
          {entry.from && (
            <>
              {' '}
              from <ColonyLabel colony={entry.from} />
            </>
          )}
          .
        </>
      );
    case 'eggs-given':
      return (
        <>
          Eggs of <Dam parentage={entry.parentage} /> given to <ColonyLabel colony={entry.to} />.
        </>
      );
    case 'graft':
      return (
        <>
          Graft {entry.name}: {entry.larvae} larvae of <Dam parentage={entry.parentage} /> in{' '}
          <ColonyLabel colony={entry.builder} />
          {entry.accepted !== undefined && `, ${entry.accepted} accepted`}.
        </>
      );
    default:
      return assertNever(entry);
  }
}

function PartWords({ part }: { readonly part: SplitPart }) {
  const frames = part.frames ? frameText(part.frames) : '';
  return (
    <>
      <PartQueenWords part={part} />
      {frames && `; ${frames}`}
    </>
  );
}

function PartQueenWords({ part: { queen } }: { readonly part: SplitPart }) {
  switch (queen.how) {
    case 'old-queen':
      return <>has the old queen</>;
    case 'given-queen':
      return (
        <>
          is given <QueenName queen={queen.queen} />
        </>
      );
    case 'given-cells':
      return (
        <>
          is given {AGES[queen.age]} of <Dam parentage={queen.parentage} />
        </>
      );
    case 'raises-own':
      return (
        <>
          raises a queen from {RAISED_FROM[queen.from]} of <Dam parentage={queen.parentage} />
        </>
      );
    case 'none':
      return <>has no queen</>;
    default:
      return assertNever(queen);
  }
}

export function Dam({ parentage }: { readonly parentage: Parentage }) {
  const [dam, second] = [...parentage.dams].sort((a, b) => b.probability - a.probability);
  if (!dam) return <>an unknown queen</>;
  return (
    <>
      {dam.probability < 1 && 'probably '}
      <QueenName queen={dam.queen} />
      {second && (
        <>
          , or <QueenName queen={second.queen} />
        </>
      )}
    </>
  );
}
