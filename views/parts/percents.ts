/** A share (0..1) in whole percents: "6 %", "0 %", and "under 1 %" for what is there and rounds to none. */
export function percents(share: number): string {
  if (share > 0 && share < 0.005) return 'under 1\u00a0%';
  return `${Math.round(100 * share)}\u00a0%`;
}

/** A share (0..1) in percents with one decimal below ten: "6.3 %", "0.4 %", "25 %". For inbreeding and kinship. */
export function finePercents(share: number): string {
  const value = 100 * share;
  return `${value < 10 ? Number(value.toFixed(1)) : Math.round(value)}\u00a0%`;
}
