import { type Entry, kindTitle } from '../../src/journal/entry.ts';
import { dayText } from '../parts/days.ts';
import styles from './EventLane.module.css';
import type { LaneProps } from './lane.ts';

/** Letters of the events that change a colony; every other entry is a short tick. */
const LETTERS: Partial<Record<Entry['kind'], string>> = {
  split: 'S',
  'cells-given': 'C',
  'eggs-given': 'E',
  graft: 'G',
  'queen-expected': 'C',
  'queen-found': 'F',
  'queen-lost': 'L',
  'queen-moved': 'Q',
  'queen-confirmed': 'Q',
  'colonies-joined': 'J',
  'colony-moved': 'M',
  'frames-moved': 'B',
  'winter-outcome': 'W',
  harvest: 'H',
};

/** What happened when: a letter for what changed the colony, a tick for each time it was opened or written of. */
export function EventLane({ colony, scale, top, height }: LaneProps) {
  const base = top + height - 10;
  let lettered = Number.NEGATIVE_INFINITY;
  return (
    <g>
      {colony.entries.map((entry) => {
        const at = scale.x(entry.day);
        if (at < 0) return null;
        const letter = LETTERS[entry.kind];
        const words = `${kindTitle(entry.kind)}, ${dayText(entry.day)}`;
        if (!letter)
          return (
            <path key={entry.id} class={styles.tick} d={`M${at} ${base}v-7`}>
              <title>{words}</title>
            </path>
          );
        const room = at - lettered >= 11;
        if (room) lettered = at;
        return (
          <g key={entry.id}>
            <title>{words}</title>
            <path class={styles.mark} d={`M${at} ${base}v-11`} />
            {room && (
              <text class={styles.letter} x={at} y={base - 14}>
                {letter}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
