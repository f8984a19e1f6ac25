import { firstDay, localDay, type PlainDay, type RoughDay } from '../../journal/day.ts';
import type { Draft, Entry } from '../../journal/entry.ts';
import type { Parentage } from '../../journal/entry-parts.ts';
import type { QueenId } from '../../journal/ids.ts';
import { type Scribe, writeEntries } from '../../journal/write.ts';
import { later, queenById } from '../../registry/queries.ts';
import type { Queen, Registry } from '../../registry/state.ts';
import { withAncestors } from './ancestry.ts';
import { traitRecords } from './records.ts';
import { fateWords, makingWords, matingWords, roughDayOf, winterSentence } from './words.ts';

/**
 * The pedigree of one queen, told to another keeper: she and her ancestors, and nothing else. Splits, colonies and
 * yards stay at home, since a split would bring its other parts with it. So each queen is told anew by an entry without
 * a colony, under her own id: where the whole journals meet later, the original entries go before what was told.
 */
export interface PedigreeOptions {
  /** Adds the trait records of each queen, as notes. Numbers of one yard say little without their neighbours. */
  readonly withTraits: boolean;
  /** Leaves out the names of yards and stations. */
  readonly hideYards: boolean;
}

export const PEDIGREE_DEFAULTS: PedigreeOptions = { withTraits: false, hideYards: true };

/** The entries of a pedigree file. `scribe` is the keeper who tells it, with the clock and the maker of ids. */
export function pedigreeEntries(
  registry: Registry,
  id: QueenId,
  scribe: Scribe,
  options: Partial<PedigreeOptions> = {},
): readonly Entry[] {
  const settings = { ...PEDIGREE_DEFAULTS, ...options };
  const queens = withAncestors(registry, queenById(registry, id).id);
  const days = new Map<QueenId, RoughDay>();
  const today = localDay(scribe.now()) as string as RoughDay;
  const teller = registry.keepers.get(scribe.keeper);
  const drafts: Draft[] = teller
    ? [{ kind: 'keeper-named', day: today, keeper: scribe.keeper, name: teller }]
    : [];
  for (const queen of queens) {
    const day = dayOf(queen, days);
    days.set(queen.id, day);
    const told = toldQueen(registry, queen, { day, today: localDay(scribe.now()) }, settings);
    drafts.push(queen.id === id && teller ? { ...told, from: teller } : told);
  }
  for (const queen of queens) {
    const mating = toldMating(queen, days, settings.hideYards);
    if (mating) drafts.push(mating);
  }
  if (settings.withTraits) drafts.push(...queens.flatMap((queen) => toldTraits(registry, queen, today)));
  const entries = writeEntries(drafts, scribe);
  if (!entries.ok)
    throw new Error(`A pedigree made of valid records is invalid: ${JSON.stringify(entries.problems)}`);
  return entries.value;
}

/** The day she is told of: when she came to be or was first spoken of, and not before her parents. */
function dayOf(queen: Queen, days: ReadonlyMap<QueenId, RoughDay>): RoughDay {
  const born = queen.born && roughDayOf(queen.born);
  const own = born ?? queen.entries[0]?.day ?? ('1900' as RoughDay);
  const parents = (queen.parentage?.dams ?? []).flatMap((dam) => days.get(dam.queen) ?? []);
  return parents.reduce((day, parent) => (firstDay(parent) > firstDay(day) ? parent : day), own);
}

function toldQueen(
  registry: Registry,
  queen: Queen,
  { day, today }: { readonly day: RoughDay; readonly today: PlainDay },
  { hideYards }: PedigreeOptions,
): Draft<'queen-entered'> {
  const born = queen.born && roughDayOf(queen.born);
  const parentage = knownDams(registry, queen.parentage);
  const words = [
    makingWords(registry, queen),
    matingWords(registry, queen, hideYards),
    winterSentence(queen, today),
    fateWords(queen),
  ];
  const remark = words.filter((each) => each !== undefined).join(' ');
  return {
    kind: 'queen-entered',
    day,
    queen: queen.id,
    ...(queen.name ? { name: queen.name } : {}),
    ...(born ? { born } : {}),
    ...(parentage ? { parentage } : {}),
    ...(queen.background ? { background: queen.background } : {}),
    ...(queen.from ? { from: queen.from } : {}),
    ...(queen.mark ? { colour: queen.mark.colour } : {}),
    ...(queen.mark?.number ? { mark: queen.mark.number } : {}),
    ...(remark ? { remark } : {}),
  };
}

function knownDams(registry: Registry, parentage: Parentage | undefined): Parentage | undefined {
  if (!parentage) return undefined;
  const dams = parentage.dams.filter(
    ({ queen, probability }) => probability > 0 && registry.queens.has(queen),
  );
  return { ...parentage, dams };
}

/** A mating that names its drone mothers is told; an open one stands in the remark, since it belongs to a yard. */
function toldMating(
  queen: Queen,
  days: ReadonlyMap<QueenId, RoughDay>,
  hideYards: boolean,
): Draft<'mating'> | undefined {
  const mating = queen.mating;
  if (!mating || mating.way.manner === 'open') return undefined;
  const droneMothers = mating.way.droneMothers.filter((mother) => days.has(mother.queen));
  if (mating.way.manner === 'insemination' && droneMothers.length === 0) return undefined;
  const way =
    mating.way.manner === 'station'
      ? { ...mating.way, droneMothers, station: hideYards ? 'not told' : mating.way.station }
      : { ...mating.way, droneMothers };
  const known = [queen.id, ...droneMothers.map((mother) => mother.queen)].flatMap((id) => days.get(id) ?? []);
  return {
    kind: 'mating',
    day: known.reduce(later, mating.day),
    queen: queen.id,
    way,
    ...(mating.effectiveMates === undefined ? {} : { effectiveMates: mating.effectiveMates }),
  };
}

function toldTraits(registry: Registry, queen: Queen, day: RoughDay): readonly Draft[] {
  const records = traitRecords(registry, queen);
  if (records.length === 0) return [];
  const lines = records.map((record) => `${record.day}: ${record.words}`);
  return [
    {
      kind: 'note',
      day,
      about: { of: 'queen', queen: queen.id },
      text: `Records of her colonies, as told:\n${lines.join('\n')}`,
    },
  ];
}
