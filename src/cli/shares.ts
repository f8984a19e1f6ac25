/** Reads the shares in a field: `A:0.7;B:0.3`, or one name alone, which then has the whole. */
import type { Share } from '../../graph/kinship/pedigree-input.ts';
import { numberIn } from './table.ts';

export type ParsedShares =
  | { readonly ok: true; readonly shares: readonly Share[] }
  | { readonly ok: false; readonly because: string };

/** Shares in one field: `A:0.7;B:0.3`, or one id that takes all. */
export function parseShares(text: string): ParsedShares {
  if (text === '') return { ok: true, shares: [] };
  if (!text.includes(';') && !text.includes(':')) return { ok: true, shares: [{ of: text, share: 1 }] };
  const shares: Share[] = [];
  for (const entry of text.split(';')) {
    const colon = entry.lastIndexOf(':');
    const of = entry.slice(0, Math.max(0, colon)).trim();
    const share = numberIn(entry.slice(colon + 1).trim());
    if (colon < 0 || of === '' || share === undefined) {
      return { ok: false, because: `'${entry.trim()}' is not NAME:SHARE, as in A:0.7;B:0.3.` };
    }
    if (!(share > 0 && share <= 1)) {
      return { ok: false, because: `'${entry.trim()}': a share is more than 0 and at most 1.` };
    }
    shares.push({ of, share });
  }
  return { ok: true, shares };
}

/** Shares within rounding of 1 leave no rest. */
const ROUNDING = 1e-9;

export type ParsedMothers =
  | { readonly ok: true; readonly mothers: readonly Share[]; readonly rest: number }
  | { readonly ok: false; readonly because: string };

/** Drone mothers, and the share that is left for a background. */
export function parseMothers(text: string): ParsedMothers {
  const parsed = parseShares(text);
  if (!parsed.ok) return parsed;
  const sum = parsed.shares.reduce((total, { share }) => total + share, 0);
  if (sum > 1 + ROUNDING) {
    return {
      ok: false,
      because: `the shares sum to ${Number(sum.toPrecision(12))}; together they are at most 1.`,
    };
  }
  const rest = 1 - sum;
  return { ok: true, mothers: parsed.shares, rest: rest > ROUNDING ? rest : 0 };
}
