import type { MarkColour } from '../../../journal/entries/queen.ts';
import { plainWords } from '../plain-words.ts';
import { saysUnknown } from './name.ts';

export type ReadMark =
  | { readonly is: 'marked'; readonly colour: MarkColour; readonly number?: string }
  | { readonly is: 'unmarked' }
  | { readonly is: 'unreadable' };

/** Words for the colours, as `plainWords` leaves them; those of other languages are from memory. */
const WORDS: Readonly<Record<MarkColour, string>> = {
  white:
    'white weiss blanc blanche blanco bianco wit w bila bily biela biala bialy vit hvid hvit valkoinen белыи біла білии',
  yellow:
    'yellow gelb jaune amarillo giallo geel y yel zluta zluty zlta zolta zolty gul keltainen желтыи жовта жовтии',
  red: 'red rot rouge rojo rosso rood r cervena cerveny czerwona czerwony rod punainen красныи червона червонии',
  green:
    'green grun gruen vert verde groen g grn zelena zeleny zielona zielony gron vihrea зеленыи зелена зелении',
  blue: 'blue blau bleu azul blu blauw b modra modry niebieska niebieski bla sininen синии синя',
  other: 'orange pink silver gold purple black',
};
const COLOURS = new Map<string, MarkColour>(
  Object.entries(WORDS).flatMap(([colour, words]) =>
    words.split(' ').map((word) => [word, colour as MarkColour] as const),
  ),
);
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
  const match = /^(\p{L}+?)\s*(\d{1,3})?$/u.exec(words);
  const colour = match?.[1] === undefined ? undefined : COLOURS.get(match[1]);
  if (!colour) return { is: 'unreadable' };
  return { is: 'marked', colour, ...(match?.[2] ? { number: match[2] } : {}) };
}
