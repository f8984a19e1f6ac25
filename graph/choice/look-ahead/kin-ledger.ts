/**
 * Kinship of every queen and every father of one simulated history, written down as they come.
 *
 *   drone x of mother S   f(x, y) = f(S, y) for all before him,  f(x, x) = 1
 *   background drone      f(x, y) = background kinship,          f(x, x) = 1
 *   queen i of D and x    f(i, y) = (f(D, y) + f(x, y))/2,       f(i, i) = (1 + f(D, x))/2,  F_i = f(D, x)
 *
 * A drone is one gamete, so all his daughters get all of him. Source: the tabular method for haplodiploids; values as
 * in the tables of Crow & Roberts 1950, Genetics 35:612 (from memory, not re-read). Cost O(entries before) each.
 */
export interface KinLedger {
  /** Entries so far. */
  size: number;
  /** Lower triangle, row by row: f(i, j) at i (i + 1)/2 + j for j <= i. */
  readonly kinship: Float64Array;
}

/** A ledger of nobody, with room for `room` queens: room^2/2 numbers. */
export function newLedger(room: number): KinLedger {
  return { size: 0, kinship: new Float64Array((room * (room + 1)) / 2) };
}

/** Kinship of two entries. */
export function kinshipOf({ kinship }: KinLedger, a: number, b: number): number {
  return a >= b ? kinship[(a * (a + 1)) / 2 + b]! : kinship[(b * (b + 1)) / 2 + a]!;
}

/** Begins anew with founders whose kinship block is given, or out of a background of this kinship. */
export function writeFounders(
  ledger: KinLedger,
  count: number,
  block: ArrayLike<number> | undefined,
  background: number,
): void {
  ledger.size = count;
  for (let a = 0; a < count; a += 1) {
    for (let b = 0; b <= a; b += 1) {
      ledger.kinship[(a * (a + 1)) / 2 + b] =
        block?.[a * count + b] ?? (a === b ? (1 + background) / 2 : background);
    }
  }
}

/** Writes a drone of this mother; returns his entry. */
export function writeDrone(ledger: KinLedger, mother: number): number {
  const { kinship, size } = ledger;
  const row = (size * (size + 1)) / 2;
  const hers = (mother * (mother + 1)) / 2;
  for (let y = 0; y <= mother; y += 1) kinship[row + y] = kinship[hers + y]!;
  for (let y = mother + 1, at = hers + 2 * mother + 1; y < size; y += 1) {
    kinship[row + y] = kinship[at]!;
    at += y + 1;
  }
  kinship[row + size] = 1;
  ledger.size += 1;
  return size;
}

/** Writes a drone of the background; returns his entry. */
export function writeBackgroundDrone(ledger: KinLedger, background: number): number {
  const { kinship, size } = ledger;
  const row = (size * (size + 1)) / 2;
  kinship.fill(background, row, row + size);
  kinship[row + size] = 1;
  ledger.size += 1;
  return size;
}

/** Writes a daughter of this dam and this drone; returns her entry. */
export function writeQueen(ledger: KinLedger, dam: number, drone: number): number {
  const { kinship, size } = ledger;
  const row = (size * (size + 1)) / 2;
  for (let y = 0; y < size; y += 1) {
    kinship[row + y] = (kinshipOf(ledger, dam, y) + kinshipOf(ledger, drone, y)) / 2;
  }
  kinship[row + size] = (1 + kinshipOf(ledger, dam, drone)) / 2;
  ledger.size += 1;
  return size;
}
