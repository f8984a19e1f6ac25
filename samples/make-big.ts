import type { Entry } from '../src/journal/entry.ts';
import type { ColonyId, QueenId, YardId } from '../src/journal/ids.ts';
import { FIRST_SEASON, found, type Hive, newId, on, type Said, type Union, write } from './big-book.ts';

/**
 * An invented registry of any size, as a breeders' union would have it after many seasons: yards of some forty
 * colonies, each season the same round of work, losses in winter made good by splits. It is made in memory for the
 * benches and never stored. Every prefix of it is a journal without contradictions.
 */

const SEASONS = 12;
/** About so many entries are written on a colony in a season. */
const ENTRIES_A_SEASON = 7.3;
const COLONIES_A_YARD = 40;
const SURVIVE = 0.75;
const MATE_WELL = 0.65;
const COUNTRY = 'bees of the country';
const COLOURS = ['blue', 'white', 'yellow', 'red', 'green'] as const;

/** So many entries, in the order in which they happened; the same seed gives the same entries. O(entries). */
export function bigJournal(entries: number, seed = 1): Entry[] {
  const union = found(seed);
  const colonies = Math.max(6, Math.round(entries / (SEASONS * ENTRIES_A_SEASON)));
  const yards = openYards(union, Math.max(1, Math.round(colonies / COLONIES_A_YARD)));
  for (let number = 0; number < colonies; number += 1) {
    const yard = yards[number % yards.length];
    if (yard) beginHive(union, yard);
  }
  for (let season = FIRST_SEASON; union.entries.length < entries; season += 1) {
    passSeason(union, season, yards, colonies);
  }
  return union.entries.slice(0, entries);
}

function openYards(union: Union, count: number): YardId[] {
  write(union, { kind: 'keeper-named', keeper: union.keeper, name: 'Union' } as Said<'keeper-named'>);
  return Array.from({ length: count }, (_, number) => {
    const yard = newId(union) as YardId;
    write(union, { kind: 'yard-opened', yard, name: `Yard ${number + 1}` } as Said<'yard-opened'>);
    return yard;
  });
}

function newHive(union: Union, yard: YardId): Hive {
  union.labels += 1;
  const hive = {
    id: newId(union) as ColonyId,
    yard,
    label: `${union.labels}`,
    head: undefined,
    virgin: undefined,
  };
  union.hives.push(hive);
  return hive;
}

function started(hive: Hive, how: Said<'colony-started'>['how']): Said<'colony-started'> {
  return { kind: 'colony-started', colony: hive.id, yard: hive.yard, label: hive.label, how };
}

function beginHive(union: Union, yard: YardId): void {
  const hive = newHive(union, yard);
  const queen = newId(union) as QueenId;
  hive.head = queen;
  const entered: Said<'queen-entered'> = {
    kind: 'queen-entered',
    queen,
    colony: hive.id,
    laying: true,
    background: COUNTRY,
  };
  write(union, started(hive, 'already-here'), entered);
}

function passSeason(union: Union, season: number, yards: readonly YardId[], colonies: number): void {
  on(union, `${season}-04-01`);
  if (season > FIRST_SEASON) walkAfterWinter(union, season);
  on(union, `${season}-04-20`);
  for (const yard of yards) {
    write(union, {
      kind: 'drone-background',
      yard,
      season,
      ownShare: 0.5,
      background: COUNTRY,
    } as Said<'drone-background'>);
  }
  for (const hive of union.hives) write(union, inspection(union, hive, 'spring'));
  on(union, `${season}-05-25`);
  makeIncrease(union, colonies);
  on(union, `${season}-06-28`);
  for (const hive of [...union.hives]) if (hive.virgin) settleVirgin(union, hive, hive.virgin, season);
  on(union, `${season}-07-10`);
  for (const hive of union.hives) write(union, inspection(union, hive, 'round'));
  on(union, `${season}-07-28`);
  for (const hive of union.hives) write(union, washOf(union, hive));
  on(union, `${season}-08-08`);
  for (const yard of yards) treatYard(union, yard, season);
  for (const hive of union.hives) write(union, harvestOf(union, hive));
  on(union, `${season}-09-28`);
  for (const hive of union.hives) write(union, inspection(union, hive, 'autumn'));
}

function walkAfterWinter(union: Union, winter: number): void {
  const survivors: Hive[] = [];
  for (const hive of union.hives) {
    const alive = union.random.uniform() < SURVIVE;
    const outcome: Said<'winter-outcome'> = {
      kind: 'winter-outcome',
      colony: hive.id,
      winter,
      alive,
      autumnFramesOfBees: halves(union, 8, 1.5),
      ...(alive ? { springFramesOfBees: halves(union, 6, 1.5) } : { cause: 'winter' }),
    };
    write(union, outcome);
    if (alive) survivors.push(hive);
  }
  union.hives = survivors;
}

function makeIncrease(union: Union, colonies: number): void {
  const missing = Math.round((colonies - union.hives.length) / MATE_WELL);
  const sources = union.hives.filter(({ head }) => head !== undefined);
  for (let number = 0; number < missing && sources.length > 0; number += 1) {
    const source = union.random.choice(sources);
    const part = newHive(union, source.yard);
    part.virgin = newId(union) as QueenId;
    write(union, started(part, 'split'), splitOf(source, part, part.virgin));
  }
}

function splitOf(source: Hive, part: Hive, expected: QueenId): Said<'split'> {
  const dam = source.head;
  if (!dam) throw new Error('A source without a queen was split.');
  const parentage = { dams: [{ queen: dam, probability: 1 }], evidence: 'dam-in-colony' as const };
  return {
    kind: 'split',
    source: source.id,
    parts: [
      { colony: source.id, queen: { how: 'old-queen', queen: dam } },
      { colony: part.id, queen: { how: 'raises-own', expected, from: 'eggs', parentage } },
    ],
  };
}

function settleVirgin(union: Union, hive: Hive, queen: QueenId, season: number): void {
  hive.virgin = undefined;
  if (union.random.uniform() < MATE_WELL) {
    hive.head = queen;
    const confirmed: Said<'queen-confirmed'> = {
      kind: 'queen-confirmed',
      queen,
      colony: hive.id,
      seen: 'eggs',
    };
    write(union, confirmed);
    const colour = COLOURS[season % 5] ?? 'other';
    write(union, { kind: 'queen-marked', queen, colour } as Said<'queen-marked'>);
    return;
  }
  const host = union.hives.find((other) => other.yard === hive.yard && other.head !== undefined);
  if (!host) return;
  const lost: Said<'queen-lost'> = { kind: 'queen-lost', queen, cause: 'failed-to-mate' };
  write(union, lost, {
    kind: 'colonies-joined',
    colony: hive.id,
    into: host.id,
    queenKept: 'of-the-receiving',
  } as Said<'colonies-joined'>);
  union.hives = union.hives.filter((each) => each !== hive);
}

function halves(union: Union, middle: number, spread: number): number {
  return Math.max(1, Math.round(2 * (middle + spread * union.random.normal())) / 2);
}

function score(union: Union): number {
  return Math.min(4, halves(union, 3, 0.6));
}

function inspection(union: Union, hive: Hive, occasion: 'spring' | 'round' | 'autumn'): Said<'inspection'> {
  const temper = occasion === 'autumn' ? {} : { gentle: score(union), calm: score(union) };
  const frames = { framesOfBees: halves(union, 8, 2), framesOfBrood: halves(union, 4, 1) };
  return { kind: 'inspection', colony: hive.id, occasion, eggs: true, ...temper, ...frames };
}

function washOf(union: Union, hive: Hive): Said<'mite-count'> {
  const mites = union.random.binomial(300, 0.015 * Math.exp(0.6 * union.random.normal()));
  return { kind: 'mite-count', colony: hive.id, sample: { method: 'wash', mites, bees: 300 } };
}

function harvestOf(union: Union, hive: Hive): Said<'harvest'> {
  return { kind: 'harvest', colony: hive.id, kilograms: halves(union, 12, 4) };
}

function treatYard(union: Union, yard: YardId, season: number): void {
  const colonies = union.hives.filter((hive) => hive.yard === yard).map(({ id }) => id);
  if (colonies.length === 0) return;
  const end = `${season}-08-22`;
  write(union, { kind: 'treatment', colonies, active: 'formic acid', end } as Said<'treatment'>);
}
