/**
 * Width of a short text in pixels at a type size, near enough to keep names apart: the real width depends on the
 * faces of the device. Narrow, wide and other letters are told apart; measured on common text faces, rounded up.
 */
export function textWidth(text: string, size: number): number {
  let units = 0;
  for (const letter of text)
    units += /[ijlt.,:;'|!I ]/.test(letter) ? 0.32 : /[mwMW@]/.test(letter) ? 0.86 : 0.56;
  return Math.ceil(units * size);
}

/** The text, or as much of it as fits with an ellipsis. */
export function fitText(text: string, size: number, room: number): string {
  if (textWidth(text, size) <= room) return text;
  let cut = [...text];
  while (cut.length > 1 && textWidth(`${cut.join('')}…`, size) > room) cut = cut.slice(0, -1);
  return `${cut.join('').trimEnd()}…`;
}
