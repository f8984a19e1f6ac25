import type { MatingInput, PedigreeInput, QueenInput, Share } from '../../../graph/kinship/pedigree-input.ts';
import type { QueenId } from '../../journal/ids.ts';
import { pedigreeInput } from '../../registry/pedigree.ts';
import { queenTitle } from '../../registry/queries.ts';
import type { Registry } from '../../registry/state.ts';

/**
 * The pedigree as plain tables (CSV, RFC 4180) for any program of statistics, and for the command line.
 *
 *   queen            her name; two of one name are told apart by year and number
 *   dam              empty for a founder; a queen; or several with probabilities, as `Alder:0.7;Birch:0.3`
 *   drone_mothers    mothers of the drones she met with their shares, or `pool:NAME` of the table of pools
 *   mates            her effective number of mates
 *   background       the population of a founder
 *   mates_background the population behind the rest of her mates
 */
export interface PedigreeTables {
  readonly pedigree: string;
  /** `pool,drone_mothers,background`; absent when no queen of the table met a pool. */
  readonly pools?: string;
}

export interface PedigreeTableOptions {
  /** Only this queen with her ancestors, by dams and by drones; else every queen. */
  readonly queen?: QueenId;
}

/** The pedigree as the tables that the command line reads: of all queens, or of one with her ancestors. */
export function pedigreeTables(registry: Registry, { queen }: PedigreeTableOptions = {}): PedigreeTables {
  const input = pedigreeInput(registry);
  const rows = queen ? ancestry(input, queen) : input.queens;
  const names = queenNames(registry, rows);
  const pools = new Map(input.pools.map((pool) => [pool.id, pool]));
  const met = new Set(rows.flatMap(({ mating }) => (mating?.kind === 'pool' ? [mating.pool] : [])));
  const poolNames = uniqueNames([...met].map((id) => [id, poolName(registry, id)]));
  const lines = rows.map((row) => [
    names.get(row.id) ?? row.id,
    damText(row.dams, names),
    mothersText(row.mating, names, poolNames),
    row.mating ? String(row.effectiveMates) : '',
    row.dams.length === 0 ? row.background : '',
    restBackground(row.mating),
  ]);
  const pedigree = csv(['queen', 'dam', 'drone_mothers', 'mates', 'background', 'mates_background'], lines);
  if (met.size === 0) return { pedigree };
  const poolLines = [...met].map((id) => {
    const pool = pools.get(id);
    return [
      poolNames.get(id) ?? id,
      sharesText(pool?.droneMothers ?? [], names),
      pool?.backgrounds[0]?.of ?? '',
    ];
  });
  return { pedigree, pools: csv(['pool', 'drone_mothers', 'background'], poolLines) };
}

/** The rows of a queen and all her ancestors, in the order of the input. */
function ancestry(input: PedigreeInput, start: QueenId): readonly QueenInput[] {
  const rows = new Map(input.queens.map((row) => [row.id, row]));
  const pools = new Map(input.pools.map((pool) => [pool.id, pool.droneMothers]));
  const wanted = new Set<string>([start]);
  // A set hands out what is added while it is walked.
  for (const id of wanted) {
    const row = rows.get(id);
    for (const { of } of row?.dams ?? []) wanted.add(of);
    for (const { of } of mothersOf(row?.mating, pools)) wanted.add(of);
  }
  return input.queens.filter(({ id }) => wanted.has(id));
}

function mothersOf(
  mating: MatingInput | undefined,
  pools: ReadonlyMap<string, readonly Share[]>,
): readonly Share[] {
  if (mating?.kind === 'pool') return pools.get(mating.pool) ?? [];
  return mating?.kind === 'drone-mothers' ? mating.droneMothers : [];
}

function damText(dams: readonly Share[], names: ReadonlyMap<string, string>): string {
  const only = dams[0];
  if (dams.length === 1 && only?.share === 1) return names.get(only.of) ?? only.of;
  return sharesText(dams, names);
}

function sharesText(shares: readonly Share[], names: ReadonlyMap<string, string>): string {
  return shares.map(({ of, share }) => `${names.get(of) ?? of}:${shareText(share)}`).join(';');
}

/** Twelve digits, cut and not rounded up, so that shares of 1 in sum never come to more. */
function shareText(share: number): string {
  return String(Math.floor(share * 1e12) / 1e12);
}

function mothersText(
  mating: MatingInput | undefined,
  names: ReadonlyMap<string, string>,
  poolNames: ReadonlyMap<string, string>,
): string {
  if (mating?.kind === 'pool') return `pool:${poolNames.get(mating.pool) ?? mating.pool}`;
  return mating?.kind === 'drone-mothers' ? sharesText(mating.droneMothers, names) : '';
}

function restBackground(mating: MatingInput | undefined): string {
  return mating?.kind === 'drone-mothers' ? (mating.backgrounds[0]?.of ?? '') : '';
}

function queenNames(registry: Registry, rows: readonly QueenInput[]): ReadonlyMap<string, string> {
  return uniqueNames(
    rows.map(({ id }) => {
      const queen = registry.queens.get(id as QueenId);
      if (!queen) return [id, 'unrecorded dam'];
      const title = queenTitle(queen);
      const year = queen.born?.last.slice(0, 4);
      return [id, title, year && !title.endsWith(year) ? `${title} ${year}` : title];
    }),
  );
}

function poolName(registry: Registry, id: string): string {
  const [yard, season] = id.split('/');
  return `${registry.yards.get(yard as never)?.name ?? 'yard'} ${season}`;
}

/** Names without signs that the table uses; where two are the same, the longer form, then numbers. */
function uniqueNames(
  given: readonly (readonly [id: string, name: string, longer?: string])[],
): ReadonlyMap<string, string> {
  const counts = new Map<string, number>();
  for (const [, name] of given) counts.set(plain(name), (counts.get(plain(name)) ?? 0) + 1);
  const taken = new Set<string>();
  const names = new Map<string, string>();
  for (const [id, name, longer = name] of given) {
    const base = (counts.get(plain(name)) ?? 0) > 1 ? plain(longer) : plain(name);
    let unique = base;
    for (let number = 2; taken.has(unique); number += 1) unique = `${base} (${number})`;
    taken.add(unique);
    names.set(id, unique);
  }
  return names;
}

function plain(name: string): string {
  return name.replace(/[,:;"\s]+/g, ' ').trim() || 'unnamed';
}

function csv(header: readonly string[], lines: readonly (readonly string[])[]): string {
  return [header, ...lines].map((cells) => `${cells.map(cellText).join(',')}\n`).join('');
}

function cellText(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
