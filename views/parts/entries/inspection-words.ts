import type { Inspection } from '../../../src/journal/entries/observation.ts';
import { count, number, QUEEN_SEEN, sentence } from '../words.ts';

/** What an inspection found, in short statements: only what was looked at is said. */
export function inspectionWords(
  entry: Omit<Inspection, 'id' | 'action' | 'recordedAt' | 'recordedBy'>,
): string {
  const statements = [
    entry.queenSeen && QUEEN_SEEN[entry.queenSeen],
    brood(entry),
    entry.droneBroodOnly && 'Drone brood only',
    entry.severalEggsInCells && 'Several eggs in a cell',
    cells(entry),
    strength(entry),
    entry.broodPattern !== undefined && `Brood pattern ${number(entry.broodPattern)} %`,
    scores(entry),
    entry.drones && `Drones: ${entry.drones === 'brood' ? 'brood only' : entry.drones}`,
  ].filter(Boolean);
  const said = statements.map((statement) => `${statement}.`).join(' ');
  return [said, entry.note].filter(Boolean).join(' ');
}

type Seen = Parameters<typeof inspectionWords>[0];

function brood(entry: Seen): string | false {
  const stages = [
    [entry.eggs, 'eggs'],
    [entry.youngBrood, 'young brood'],
    [entry.cappedWorkerBrood, 'capped brood'],
  ] as const;
  const there = stages.filter(([seen]) => seen === true).map(([, word]) => word);
  const missing = stages.filter(([seen]) => seen === false).map(([, word]) => `no ${word}`);
  const all = [...there, ...missing].join(', ');
  return all !== '' && sentence(all);
}

/** A finding of the rounds says that there are cells, and not how many. */
function cells(entry: Seen): string | false {
  const kinds = [
    [entry.openCells, 'open'],
    [entry.cappedCells, 'capped'],
    [entry.emergedCells, 'emerged'],
    [entry.tornCells, 'torn down'],
  ] as const;
  const known = kinds.filter((kind): kind is [number, (typeof kind)[1]] => kind[0] !== undefined);
  if (known.length === 0) return false;
  if (known.every(([found]) => found === 0)) return 'No queen cells';
  return `Queen cells: ${known
    .filter(([found]) => found > 0)
    .map(([found, word]) => (entry.occasion === 'calendar' ? word : `${found} ${word}`))
    .join(', ')}`;
}

function strength(entry: Seen): string | false {
  const parts = [
    [entry.framesOfBees, 'bees'],
    [entry.framesOfBrood, 'brood'],
    [entry.framesOfStores, 'stores'],
  ] as const;
  const known = parts.filter((part): part is [number, (typeof part)[1]] => part[0] !== undefined);
  return (
    known.length > 0 &&
    known
      .map(([frames, of], at) => `${at === 0 ? count(frames, 'frame') : number(frames)} of ${of}`)
      .join(', ')
  );
}

function scores(entry: Seen): string | false {
  const known = [
    entry.gentle !== undefined && `gentle ${number(entry.gentle)}`,
    entry.calm !== undefined && `calm ${number(entry.calm)}`,
    entry.swarmTendency !== undefined && `swarm tendency ${number(entry.swarmTendency)}`,
  ].filter(Boolean) as string[];
  const text = known.join(', ');
  return text !== '' && `${sentence(text)} (of 4)`;
}
