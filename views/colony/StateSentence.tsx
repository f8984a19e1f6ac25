import { dayNumber, firstDay, isExactDay } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import type { EntryKind } from '../../src/journal/entry.ts';
import { headOn, isLiving, tenureOn } from '../../src/registry/queries.ts';
import type { Queen, Tenure } from '../../src/registry/state.ts';
import { wintersHeaded } from '../../src/registry/winters-of-queen.ts';
import { waitingText } from '../parts/awaited.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { lastInspection, lastStrength, placeOf } from '../parts/colony-facts.ts';
import { dayInYear, relativeDay } from '../parts/days.ts';
import type { HeadProps } from '../parts/HeadLine.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { COMPASS, count, LOSS_CAUSES, QUEEN_LOSSES } from '../parts/words.ts';

/** How a colony stands on a day: its head and since when, its strength as last seen, its place. */
export function StateSentence({ colony, registry, on }: HeadProps) {
  if (!isLiving(colony, on) && colony.ended) {
    return (
      <>
        Ended {isExactDay(colony.ended.day) ? 'on' : 'in'} {dayText(colony.ended.day)}:{' '}
        {LOSS_CAUSES[colony.ended.cause]}
        {colony.ended.into && (
          <>
            , went into <ColonyLabel colony={colony.ended.into} />
          </>
        )}
        .
      </>
    );
  }
  const strength = lastStrength(colony, on);
  const seen = lastInspection(colony, on);
  const place = placeOf(colony, on);
  const stands = [
    place?.stand && `on stand ${place.stand}`,
    place?.entrance && `entrance to the ${COMPASS[place.entrance]}`,
  ].filter(Boolean);
  return (
    <>
      <HeadSentence colony={colony} registry={registry} on={on} />
      {strength &&
        ` ${count(strength.frames, 'frame')} of bees on ${dayInYear(strength.day, on)}${strength.divided ? ', before the split' : ''}.`}
      {seen ? ` Last inspected ${relativeDay(seen.day, on)}.` : ' Not inspected yet.'}
      {stands.length > 0 && ` Stands ${stands.join(', ')}.`}
    </>
  );
}

function HeadSentence({ colony, registry, on }: HeadProps) {
  const head = headOn(registry, colony, on);
  const tenure = tenureOn(colony, on);
  if (head && tenure) {
    const winters = wintersHeaded(head, on);
    return (
      <>
        Headed by <QueenName queen={head} />, {sinceWords(head, tenure)} {dayInYear(tenure.from, on)}
        {winters > 0 ? `, through ${count(winters, 'winter')}.` : '.'}
      </>
    );
  }
  const waiting = waitingText(registry, colony, on);
  if (waiting) return <>{waiting}</>;
  const last = colony.tenures.at(-1);
  if (!last) return <>Who heads it is not known.</>;
  const open = last.to && dayNumber(firstDay(last.to)) <= dayNumber(on);
  return (
    <>
      Who heads it is not known
      {open && last.to && (
        <>
          {' '}
          since <QueenName queen={last.queen} /> ({last.ended ? QUEEN_LOSSES[last.ended] : 'gone'},{' '}
          {dayInYear(last.to, on)})
        </>
      )}
      .
    </>
  );
}

/** What the day is that a tenure begins on: of the deed, or only of the day on which she was found or written down. */
function sinceWords(head: Queen, tenure: Tenure): string {
  const began = head.entries.find(({ kind, day }) => day === tenure.from && kind in FIRST_KNOWN);
  return (began && FIRST_KNOWN[began.kind]) ?? 'since';
}

const FIRST_KNOWN: Partial<Record<EntryKind, string>> = {
  'queen-entered': 'on record since',
  'queen-confirmed': 'found laying on',
  'queen-found': 'found on',
};
