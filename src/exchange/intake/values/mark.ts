import type { MarkColour } from '../../../journal/entries/queen.ts';
import { plainWords } from '../fields.ts';
import { saysUnknown } from './name.ts';

export type ReadMark =
  | { readonly is: 'marked'; readonly colour: MarkColour; readonly number?: string }
  | { readonly is: 'unmarked' }
  | { readonly is: 'unreadable' };

const COLOURS: Readonly<Record<string, MarkColour>> = {
  white: 'white',
  weiss: 'white',
  blanc: 'white',
  blanche: 'white',
  blanco: 'white',
  bianco: 'white',
  wit: 'white',
  w: 'white',
  yellow: 'yellow',
  gelb: 'yellow',
  jaune: 'yellow',
  amarillo: 'yellow',
  giallo: 'yellow',
  geel: 'yellow',
  y: 'yellow',
  yel: 'yellow',
  red: 'red',
  rot: 'red',
  rouge: 'red',
  rojo: 'red',
  rosso: 'red',
  rood: 'red',
  r: 'red',
  green: 'green',
  grun: 'green',
  gruen: 'green',
  vert: 'green',
  verde: 'green',
  groen: 'green',
  g: 'green',
  grn: 'green',
  blue: 'blue',
  blau: 'blue',
  bleu: 'blue',
  azul: 'blue',
  blu: 'blue',
  blauw: 'blue',
  b: 'blue',
  orange: 'other',
  pink: 'other',
  silver: 'other',
  gold: 'other',
  purple: 'other',
  black: 'other',
};
const UNMARKED = new Set([
  'unmarked',
  'no',
  'none',
  'not marked',
  'nein',
  'ohne',
  'ungezeichnet',
  'non',
  'sin marcar',
  'n',
  '0',
]);

/** Reads a mark: "blue 23", "B23", "rot", "unmarked". */
export function readMark(text: string): ReadMark {
  if (saysUnknown(text)) return { is: 'unmarked' };
  const words = plainWords(text)
    .replace(/\b(dot|nr|no|number|marked|mark|opalith|punkt)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (UNMARKED.has(words) || UNMARKED.has(plainWords(text))) return { is: 'unmarked' };
  const match = /^([a-z]+?)\s*(\d{1,3})?$/.exec(words);
  const colour = match?.[1] === undefined ? undefined : COLOURS[match[1]];
  if (!colour) return { is: 'unreadable' };
  return { is: 'marked', colour, ...(match?.[2] ? { number: match[2] } : {}) };
}
