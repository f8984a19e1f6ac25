/** Letters that are no letter with an accent, and stand for another one in plain words. */
const PLAIN: Readonly<Record<string, string>> = { ß: 'ss', ł: 'l', ø: 'o', æ: 'ae', œ: 'oe', đ: 'd', ı: 'i' };

/**
 * Letters of any script without accents and signs, in lower case: "Königin (Nr.)" becomes "konigin nr". A sign within a
 * word that is no letter, such as an apostrophe, parts it.
 */
export function plainWords(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßłøæœđı]/g, (letter) => PLAIN[letter] ?? letter)
    .replace(/[^\p{L}\p{N}%]+/gu, ' ')
    .trim();
}
