import type { EntryOf } from '../../../src/journal/entry.ts';
import { assertNever } from '../../../src/journal/problems.ts';
import { useStore } from '../../app/store-context.ts';
import { QueenName } from '../QueenName.tsx';

/** How and where a queen mated: "flew from Orchard", "inseminated with drones of ...". */
export function MatingWords({ entry }: { readonly entry: EntryOf<'mating'> }) {
  const { registry } = useStore();
  const { way } = entry;
  switch (way.manner) {
    case 'open':
      return <>flew from {registry.value.yards.get(way.yard)?.name ?? 'a yard not in these records'}</>;
    case 'station':
      return (
        <>
          mated at the station {way.station}
          <Drones mothers={way.droneMothers} />
        </>
      );
    case 'insemination':
      return (
        <>
          inseminated
          <Drones mothers={way.droneMothers} />
          {way.singleDrone && ', one drone'}
        </>
      );
    default:
      return assertNever(way);
  }
}

type Mothers = Extract<EntryOf<'mating'>['way'], { manner: 'insemination' }>['droneMothers'];

function Drones({ mothers }: { readonly mothers: Mothers }) {
  if (mothers.length === 0) return null;
  return (
    <>
      {' '}
      with drones of{' '}
      {mothers.map(({ queen }, at) => (
        <span key={queen}>
          {at > 0 && ', '}
          <QueenName queen={queen} />
        </span>
      ))}
    </>
  );
}
