import { plainWords } from './plain-words.ts';
import type { Table, TableRow } from './table.ts';

/** Rows below the header that hold no records. */

const TOTALS =
  /^(totals?|sum|sums|average|avg|mean|count|summe|gesamt|anzahl|durchschnitt|mittel|somme|moyenne|suma|media|celkem|prumer|razem|srednia|totalt|yhteensa)\b[\s:.]*/i;

/**
 * Rows that say again, word for word, what the row right above them said: the line of each, and of the first of them.
 * Further apart the same words may be meant for another day or yard, whose cell was merged.
 */
const repeated = new WeakMap<Table, ReadonlyMap<number, number>>();

function repeatedRows(table: Table): ReadonlyMap<number, number> {
  const known = repeated.get(table);
  if (known) return known;
  const again = new Map<number, number>();
  let above: { readonly line: number; readonly text: string } | undefined;
  for (const { line, cells } of table.rows) {
    const text = cells.join('\t');
    if (above?.text === text) again.set(line, above.line);
    else above = { line, text };
  }
  repeated.set(table, again);
  return again;
}

/** Why a row below the header holds no records: the header once more, a row of totals, or a row said already. */
export function skippedBecause(table: Table, row: TableRow): string | undefined {
  const above = repeatedRows(table).get(row.line);
  if (above !== undefined) return `Row ${above} once more, word for word.`;
  const full = row.cells.filter((cell) => cell !== '');
  const same = row.cells.filter(
    (cell, column) => cell !== '' && plainWords(cell) === plainWords(table.header[column] ?? ''),
  );
  if (full.length > 0 && same.length * 2 > full.length) return 'The header once more.';
  const first = full[0] ?? '';
  const rest = full.slice(1);
  const sums = rest.length > 0 && rest.every((cell) => /^[\d.,\s%/-]+(?:\p{L}+)?$/u.test(cell));
  if (TOTALS.test(first) && (sums || full.length === 1)) return 'A row of totals.';
  return undefined;
}
