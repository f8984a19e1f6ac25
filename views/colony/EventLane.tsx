import { dayText } from '../../src/journal/day-words.ts';
import { type Entry, kindTitle } from '../../src/journal/entry.ts';
import styles from './EventLane.module.css';
import type { LaneProps } from './lane.ts';

/** Letter and words of the events that change a colony; every other entry is a short tick. */
const LETTERS: Partial<Record<Entry['kind'], readonly [letter: string, words: string]>> = {
  split: ['S', 'split'],
  'cells-given': ['C', 'cells'],
  'queen-expected': ['C', 'cells'],
  'eggs-given': ['E', 'eggs given'],
  graft: ['G', 'graft'],
  'queen-found': ['F', 'another queen found'],
  'queen-lost': ['L', 'queen lost'],
  'queen-moved': ['Q', 'queen lays or is put in'],
  'queen-confirmed': ['Q', 'queen lays or is put in'],
  'colonies-joined': ['J', 'joined'],
  'colony-moved': ['M', 'moved'],
  'frames-moved': ['B', 'brood or frames moved'],
  'winter-outcome': ['W', 'winter outcome'],
  harvest: ['H', 'harvest'],
};

/** The key to the letters that occur in a colony: "S split, W winter outcome". */
export function letterKey(entries: readonly Entry[]): string {
  const found = new Map(entries.flatMap(({ kind }) => (LETTERS[kind] ? [LETTERS[kind]] : [])));
  return [...found].map(([letter, words]) => `${letter} ${words}`).join(', ');
}

/** What happened when: a letter for what changed the colony, a tick for each time it was opened or written of. */
export function EventLane({ colony, scale, top, height }: LaneProps) {
  const base = top + height - 10;
  let lettered = Number.NEGATIVE_INFINITY;
  return (
    <g>
      {colony.entries.map((entry) => {
        const at = scale.x(entry.day);
        if (at < 0) return null;
        const letter = LETTERS[entry.kind]?.[0];
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
