import type { PlainDay } from '../../src/journal/day.ts';
import { headOn, wintersHeaded } from '../../src/registry/queries.ts';
import type { Colony, Queen, Registry } from '../../src/registry/state.ts';
import { windowText } from './days.ts';
import { QueenName } from './QueenName.tsx';
import { count } from './words.ts';

/** Who heads a colony on a day: her name, or who is on the way, or nobody known. */
export function HeadLine({ colony, registry, on }: HeadProps) {
  const head = headOn(registry, colony, on);
  if (head) return <QueenName queen={head} />;
  const coming = expectedQueens(colony, registry);
  if (coming.length === 0) return <>Nobody known</>;
  const first = coming[0];
  return <>{coming.length === 1 && first?.name ? <QueenName queen={first} /> : 'A queen expected'}</>;
}

export interface HeadProps {
  readonly colony: Colony;
  readonly registry: Registry;
  readonly on: PlainDay;
}

/** How she stands, in a few words: "proven, 2 winters", "laying", "virgin expected between 13 and 20 May". */
export function headWords({ colony, registry, on }: HeadProps): string {
  const head = headOn(registry, colony, on);
  if (head) {
    const winters = wintersHeaded(head, on);
    return winters > 0 ? `proven, ${count(winters, 'winter')}` : 'laying, not yet wintered';
  }
  const coming = expectedQueens(colony, registry);
  if (coming.length === 0) return 'no queen known, none expected';
  return expectedWords(coming, on);
}

function expectedWords(coming: readonly Queen[], on: PlainDay): string {
  const born = coming.find((queen) => queen.born)?.born;
  if (!born) return 'cells, eggs or a virgin';
  if (born.last < on) return 'virgin emerged, eggs not seen yet';
  return `emerges ${windowText(born, on)}`;
}

export function expectedQueens(colony: Colony, registry: Registry): readonly Queen[] {
  return colony.expected.flatMap((id) => registry.queens.get(id) ?? []);
}
