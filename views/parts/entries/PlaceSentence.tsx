import type { EntryOf } from '../../../src/journal/entry.ts';
import type { Place, YardId } from '../../../src/journal/entry-parts.ts';
import { assertNever } from '../../../src/journal/problems.ts';
import { useStore } from '../../app/store-context.ts';
import { ColonyLabel } from '../ColonyLabel.tsx';
import { BEGINNINGS, COMPASS, frameText, LOSS_CAUSES, sentence } from '../words.ts';
import { ofKinds } from './kinds.ts';

type PlaceKinds =
  | 'yard-opened'
  | 'drone-background'
  | 'colony-started'
  | 'colony-moved'
  | 'colony-relabelled'
  | 'colonies-joined'
  | 'colony-ended'
  | 'frames-moved';
export const isPlace = ofKinds<PlaceKinds>(
  'yard-opened',
  'drone-background',
  'colony-started',
  'colony-moved',
  'colony-relabelled',
  'colonies-joined',
  'colony-ended',
  'frames-moved',
);

export function PlaceSentence({ entry }: { readonly entry: EntryOf<PlaceKinds> }) {
  switch (entry.kind) {
    case 'yard-opened':
      return <>Yard {entry.name} opened.</>;
    case 'drone-background':
      return (
        <>
          Drones of {entry.season} at <YardName yard={entry.yard} />: {Math.round(entry.ownShare * 100)} %
          from own colonies, the rest {entry.background}.
        </>
      );
    case 'colony-started':
      return (
        <>
          {sentence(BEGINNINGS[entry.how])}
          {entry.from && ` from ${entry.from}`}, at <YardName yard={entry.yard} />
          <PlaceWords place={entry.place} />.
        </>
      );
    case 'colony-moved':
      return (
        <>
          Moved to <YardName yard={entry.yard} />
          <PlaceWords place={entry.place} />.
        </>
      );
    case 'colony-relabelled':
      return <>New label: {entry.label}.</>;
    case 'colonies-joined':
      return (
        <>
          <ColonyLabel colony={entry.colony} /> went into <ColonyLabel colony={entry.into} />;{' '}
          {KEPT[entry.queenKept]}.
        </>
      );
    case 'colony-ended':
      return <>Ended: {LOSS_CAUSES[entry.cause]}.</>;
    case 'frames-moved':
      return (
        <>
          {frameText(entry.frames) || 'Frames'} from <ColonyLabel colony={entry.from} /> to{' '}
          <ColonyLabel colony={entry.to} />
          {entry.aboveExcluder && ', above an excluder'}.
        </>
      );
    default:
      return assertNever(entry);
  }
}

const KEPT = {
  'of-the-receiving': 'the queen of the receiving colony was kept',
  'of-the-joined': 'the queen that came was kept',
  unknown: 'whose queen was kept is not known',
} as const;

function YardName({ yard }: { readonly yard: YardId }) {
  return <>{useStore().registry.value.yards.get(yard)?.name ?? 'a yard not in these records'}</>;
}

function PlaceWords({ place }: { readonly place: Place | undefined }) {
  if (!place) return null;
  return (
    <>
      {place.stand && `, stand ${place.stand}`}
      {place.underRoofWith && (
        <>
          , under one roof with <ColonyLabel colony={place.underRoofWith} />
        </>
      )}
      {place.entrance && `, entrance to the ${COMPASS[place.entrance]}`}
    </>
  );
}
