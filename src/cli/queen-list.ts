/** An option whose value is `all`, or queens with commas between; an id that holds a comma stands in quotes, as in a table. */
import type { Pedigree } from '../../graph/kinship/pedigree.ts';
import { readCsv } from './csv-read.ts';

export type QueenList =
  | { readonly ok: true; readonly queens: Int32Array }
  | { readonly ok: false; readonly problems: readonly string[] };

/** Queens named by an option: `all`, or ids separated by commas. Unknown and repeated ids are problems. */
export function readQueenList(pedigree: Pedigree, option: string, text: string): QueenList {
  if (text === 'all') return { ok: true, queens: Int32Array.from(pedigree.queenIds.keys()) };
  const problems: string[] = [];
  const queens = new Set<number>();
  const { fields, openQuote } = readCsv(text);
  if (openQuote) problems.push(`--${option}: a quote is opened and never closed in ${text}.`);
  else if (fields.length === 0) problems.push(`--${option} names no queen.`);
  for (const id of fields) {
    const queen = pedigree.queenIndex.get(id);
    if (queen === undefined) problems.push(`--${option}: '${id}' is no queen of the pedigree.`);
    else if (queens.has(queen)) problems.push(`--${option}: '${id}' stands twice.`);
    else queens.add(queen);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, queens: Int32Array.from(queens) };
}
