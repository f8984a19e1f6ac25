/** A number as keepers write it: 3.5, 3,5, 3½, 12 kg. Nothing when there is more in the cell than one number. */
export interface ReadNumber {
  readonly value: number;
  /** Letters after it, in lower case: a unit, or nothing. */
  readonly unit: string;
}

const FRACTIONS: Readonly<Record<string, number>> = { '½': 0.5, '¼': 0.25, '¾': 0.75 };

export function readNumber(text: string): ReadNumber | undefined {
  const match = /^\s*(\d{0,6})(?:[.,](\d{1,3}))?\s*([½¼¾])?\s*([a-zA-Zäöü%]*)\.?\s*$/u.exec(text);
  if (!match) return undefined;
  const [, whole = '', decimals, fraction, unit = ''] = match;
  if (whole === '' && fraction === undefined && decimals === undefined) return undefined;
  if (fraction !== undefined && decimals !== undefined) return undefined;
  const value =
    Number(`${whole === '' ? '0' : whole}.${decimals ?? '0'}`) + (fraction ? (FRACTIONS[fraction] ?? 0) : 0);
  return { value, unit: unit.toLowerCase() };
}
