/**
 * The row of each queen in the drawing of the lines: the year she was born, and a step lower within the year
 * for a daughter born in the same year as her dam.
 *
 *   year(q) = max(birth year of q, year(dam of q))
 *   step(q) = step(dam) + 1 when year(q) = year(dam), else 0
 *   row(q)  = rows of all earlier years that have queens + step(q)
 *
 * A year that nobody recorded is set between its neighbours: the year after the dam's, yet before that of the
 * earliest known daughter; a founder's is the one before her earliest daughter's, else the first year of all.
 * Source: our own rule (rank by year, since ranking by longest path sends a young founder to the last row).
 * Cost O(n log n) for the list of years, else O(n).
 */

/** The rows to be placed: a forest of most probable dams, with dams before daughters. */
export interface Forest {
  /** Rows of the descent table that take part, dams before daughters. */
  readonly members: readonly number[];
  /** Tree dam of each row of the descent table, -1 for a root. */
  readonly dam: Int32Array;
  readonly bornYear: (row: number) => number | undefined;
}

export interface LayoutRow {
  /** The year the row belongs to; absent when not one birth year is known. */
  readonly year?: number;
  /** 0 for the first row of the year, 1 for daughters of queens of the same year, and so on. */
  readonly step: number;
}

export interface RowPlan {
  readonly rows: readonly LayoutRow[];
  /** Index into `rows` for each row of the descent table; -1 for queens that take no part. */
  readonly rowOf: Int32Array;
}

/** Ranks the queens of the forest by year. */
export function planRows(forest: Forest): RowPlan {
  const { years, anyKnown } = placedYears(forest);
  const step = new Int32Array(forest.dam.length);
  const steps = new Map<number, number>();
  for (const row of forest.members) {
    const dam = forest.dam[row]!;
    if (dam >= 0 && years[dam] === years[row]) step[row] = step[dam]! + 1;
    steps.set(years[row]!, Math.max(step[row]! + 1, steps.get(years[row]!) ?? 0));
  }
  const first = new Map<number, number>();
  const rows: LayoutRow[] = [];
  for (const [year, count] of [...steps].sort((a, b) => a[0] - b[0])) {
    first.set(year, rows.length);
    for (let k = 0; k < count; k += 1) rows.push(anyKnown ? { year, step: k } : { step: k });
  }
  const rowOf = new Int32Array(forest.dam.length).fill(-1);
  for (const row of forest.members) rowOf[row] = first.get(years[row]!)! + step[row]!;
  return { rows, rowOf };
}

function placedYears({ members, dam, bornYear }: Forest): { years: Float64Array; anyKnown: boolean } {
  const { latest, earliest } = bounds({ members, dam, bornYear });
  const years = new Float64Array(dam.length);
  for (const row of members) {
    const above = dam[row]! >= 0 ? years[dam[row]!]! : -Infinity;
    const between = dam[row]! >= 0 ? Math.min(above + 1, latest[row]!) : latest[row]!;
    const guess = between === Infinity ? earliest : between;
    years[row] = Math.max(bornYear(row) ?? guess, above);
  }
  return { years, anyKnown: members.some((row) => bornYear(row) !== undefined) };
}

/** For each row the year before that of its earliest daughter of known year, and the earliest year of all. */
function bounds({ members, dam, bornYear }: Forest): { latest: Float64Array; earliest: number } {
  const latest = new Float64Array(dam.length).fill(Infinity);
  let earliest = Infinity;
  for (let k = members.length - 1; k >= 0; k -= 1) {
    const row = members[k]!;
    const year = bornYear(row) ?? latest[row]!;
    earliest = Math.min(earliest, year);
    if (dam[row]! >= 0) latest[dam[row]!] = Math.min(latest[dam[row]!]!, year - 1);
  }
  return { latest, earliest: earliest === Infinity ? 0 : earliest };
}
