/** One entry of every kind, with every field that a kind has somewhere. */
import type { Draft, Entry } from '../../src/journal/entry.ts';
import type {
  ActionId,
  ColonyId,
  EntryId,
  KeeperId,
  PhotoId,
  QueenId,
  YardId,
} from '../../src/journal/ids.ts';
import { countingIds, written } from './devices.ts';

type Day = Draft['day'];

export function everyKind(): readonly Entry[] {
  const newId = countingIds(0xabc);
  const keeper = newId() as KeeperId;
  const [yard, other] = [newId() as YardId, newId() as YardId];
  const [a, b, c, d] = [newId(), newId(), newId(), newId()] as [ColonyId, ColonyId, ColonyId, ColonyId];
  const [dam, first, second, third, fourth] = [newId(), newId(), newId(), newId(), newId()] as QueenId[];
  const photo = newId() as PhotoId;
  const day = (text: string) => text as Day;
  const parentage = { dams: [{ queen: dam!, probability: 0.9 }], evidence: 'eggs-named' as const };
  const drafts: readonly Draft[] = [
    { kind: 'keeper-named', day: day('2024'), keeper, name: 'Ida' },
    { kind: 'yard-opened', day: day('2024-04'), yard, name: 'Hill', where: 'behind the mill', roundOrder: 1 },
    { kind: 'yard-opened', day: day('2024-04'), yard: other, name: 'Brook' },
    {
      kind: 'drone-background',
      day: day('2024-04'),
      yard,
      season: 2024,
      ownShare: 0.4,
      droneColonies: [{ colony: a, weight: 2 }],
      background: 'local',
      backgroundKinship: 0.03,
    },
    {
      kind: 'colony-started',
      day: day('2024-04-10'),
      colony: a,
      yard,
      label: 'Box 1',
      how: 'bought',
      from: 'a neighbour',
      box: 'deep',
      place: { stand: '3', entrance: 'SE' },
    },
    {
      kind: 'colony-started',
      day: day('2024-05-14'),
      colony: b,
      yard,
      label: 'Box 2',
      how: 'split',
      place: { underRoofWith: a, entrance: 'NW' },
    },
    { kind: 'colony-started', day: day('2024-05-14'), colony: c, yard, label: 'Box 3', how: 'split' },
    { kind: 'colony-started', day: day('2024-06-01'), colony: d, yard, label: 'Box 4', how: 'swarm-taken' },
    {
      kind: 'queen-entered',
      day: day('2024-04-10'),
      queen: dam!,
      name: 'Old Alder',
      colony: a,
      born: day('2023'),
      background: 'local',
      from: 'a neighbour',
      laying: true,
      colour: 'red',
      mark: '12',
    },
    {
      kind: 'mating',
      day: day('2024-04-10'),
      queen: dam!,
      way: { manner: 'station', station: 'Isle', droneMothers: [], background: 'isle drones' },
      effectiveMates: 9,
    },
    {
      kind: 'split',
      day: day('2024-05-14'),
      source: a,
      parts: [
        {
          colony: a,
          queen: { how: 'old-queen', queen: dam! },
          frames: {
            eggs: 1,
            openBrood: 2.5,
            emergingBrood: 1,
            stores: 2,
            drawnComb: 1,
            foundation: 2,
            shakenBees: 1,
          },
        },
        { colony: b, queen: { how: 'raises-own', expected: first!, parentage, from: 'eggs' } },
        {
          colony: c,
          queen: { how: 'given-cells', expected: second!, parentage, cellsFrom: a, age: 'capped', cells: 3 },
          frames: { cells: 1 },
        },
      ],
    },
    {
      kind: 'graft',
      day: day('2024-05-15'),
      builder: a,
      name: 'First graft',
      parentage,
      larvae: 20,
      larvaAgeDays: 1,
      accepted: 14,
    },
    {
      kind: 'frames-moved',
      day: day('2024-05-20'),
      from: a,
      to: b,
      frames: { emergingBrood: 1 },
      aboveExcluder: true,
    },
    { kind: 'queen-confirmed', day: day('2024-06-14'), queen: first!, colony: b, seen: 'eggs' },
    {
      kind: 'queen-marked',
      day: day('2024-06-14'),
      queen: first!,
      colour: 'green',
      mark: '4',
      clipped: false,
    },
    { kind: 'queen-named', day: day('2024-06-14'), queen: first!, name: 'Birch' },
    { kind: 'mating', day: day('2024-06-05'), queen: first!, way: { manner: 'open', yard } },
    { kind: 'queen-lost', day: day('2024-06-20'), queen: second!, cause: 'failed-to-mate' },
    { kind: 'eggs-given', day: day('2024-06-21'), to: c, from: a, expected: third!, parentage },
    {
      kind: 'parentage-stated',
      day: day('2024-06-22'),
      queen: third!,
      parentage: { dams: [{ queen: dam!, probability: 1 }], evidence: 'marker-test' },
    },
    {
      kind: 'cells-given',
      day: day('2024-06-25'),
      to: d,
      from: a,
      expected: fourth!,
      parentage,
      age: 'emerging',
      cells: 2,
      eggsLaid: '2024-06-10' as never,
      graft: 'First graft',
    },
    { kind: 'queen-moved', day: day('2024-08-01'), queen: first!, to: b, how: 'caged' },
    {
      kind: 'queen-found',
      day: day('2025-05-01'),
      queen: newId() as QueenId,
      colony: b,
      insteadOf: first!,
      name: 'Cedar',
      born: day('2024-08'),
    },
    { kind: 'queen-expected', day: day('2025-05-10'), queen: newId() as QueenId, colony: b, reason: 'swarm' },
    {
      kind: 'inspection',
      day: day('2025-04-20'),
      colony: a,
      occasion: 'spring',
      queenSeen: 'seen-marked',
      eggs: true,
      youngBrood: true,
      cappedWorkerBrood: true,
      droneBroodOnly: false,
      severalEggsInCells: false,
      openCells: 0,
      cappedCells: 0,
      emergedCells: 0,
      tornCells: 0,
      gentle: 3.5,
      calm: 4,
      swarmTendency: 4,
      framesOfBees: 7,
      framesOfBrood: 5,
      framesOfStores: 2,
      broodPattern: 92,
      drones: 'brood',
      note: 'strong',
      photos: [photo],
    },
    {
      kind: 'mite-count',
      day: day('2025-06-01'),
      colony: a,
      sample: { method: 'wash', mites: 6, bees: 300, beesCounted: true },
    },
    {
      kind: 'mite-count',
      day: day('2025-06-02'),
      colony: a,
      sample: { method: 'natural-drop', mites: 12, days: 3 },
    },
    {
      kind: 'treatment',
      day: day('2025-08-01'),
      colonies: [a, b],
      active: 'formic acid',
      manner: 'pad',
      end: '2025-08-15' as never,
      honeyWaitDays: 0,
      against: 'mites',
    },
    {
      kind: 'winter-outcome',
      day: day('2026-03-20'),
      colony: a,
      winter: 2026,
      alive: true,
      autumnFramesOfBees: 9,
      springFramesOfBees: 6,
    },
    {
      kind: 'hygienic-test',
      day: day('2025-07-01'),
      colony: a,
      method: 'pin',
      cells: 50,
      notCleared: 12,
      hours: 10,
    },
    { kind: 'harvest', day: day('2025-07-20'), colony: a, kilograms: 12.5 },
    { kind: 'feeding', day: day('2025-09-01'), colony: a, feed: 'syrup', kilograms: 6 },
    { kind: 'colony-moved', day: day('2025-09-10'), colony: a, yard: other, place: { stand: 'west' } },
    { kind: 'colony-relabelled', day: day('2025-09-10'), colony: a, label: 'Brook 1' },
    { kind: 'colonies-joined', day: day('2025-09-12'), colony: c, into: b, queenKept: 'of-the-receiving' },
    { kind: 'colony-ended', day: day('2025-10-01'), colony: d, cause: 'mites' },
    {
      kind: 'note',
      day: day('2025-10-01'),
      about: { of: 'yard', yard },
      text: 'Wasps',
      photos: [photo],
      overruled: [{ rule: 'day-in-future', reason: 'none' }],
      remark: 'seen at dusk',
    },
    { kind: 'task-settled', day: day('2025-10-02'), colony: a, task: 'wash-due', how: 'set-aside' },
  ];
  const entries = written(drafts, { keeper, now: () => new Date('2026-05-30T12:00:00Z'), newId });
  return [...entries, ...about(entries, newId, keeper)];
}

/** Entries about other entries: the end of a treatment, a correction, a withdrawal. */
function about(entries: readonly Entry[], newId: () => string, keeper: KeeperId): readonly Entry[] {
  const of = (kind: Entry['kind']): EntryId => entries.find((entry) => entry.kind === kind)!.id;
  const harvest = entries.find((entry) => entry.kind === 'harvest')!;
  const {
    id,
    action: _,
    recordedAt: __,
    recordedBy: ___,
    ...draft
  } = harvest as Entry & { action: ActionId };
  return written(
    [
      { kind: 'treatment-ended', day: '2025-08-14' as Day, treatment: of('treatment') },
      { ...(draft as Draft<'harvest'>), kilograms: 13, supersedes: id },
      { kind: 'withdrawal', day: '2025-10-03' as Day, withdraws: [of('feeding')], reason: 'wrong box' },
    ],
    { keeper, now: () => new Date('2026-05-30T12:05:00Z'), newId },
  );
}
