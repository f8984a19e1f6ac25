import { plainWords } from '../plain-words.ts';

/** A queen as a cell names her: "Birch", "Birch 2021", "Birch '21". */
export interface NamedQueen {
  readonly name: string;
  readonly year?: number;
}

/** What a cell says of a dam. */
export type ReadDam =
  | {
      readonly is: 'named';
      readonly dams: readonly NamedQueen[];
      readonly doubtful: boolean;
      readonly remark?: string;
    }
  | { readonly is: 'unknown' }
  /** The cell says something, but not who the dam was. */
  | { readonly is: 'unclear'; readonly because: string };

const UNKNOWN = new Set([
  '',
  '-',
  '--',
  '?',
  '??',
  'unknown',
  'unkown',
  'unk',
  'n/a',
  'na',
  'none',
  'nil',
  'not known',
  'no idea',
  'unbekannt',
  'unbek',
  'inconnu',
  'inconnue',
  'desconocida',
  'desconocido',
  'sconosciuta',
  'onbekend',
  'ukendt',
  'okand',
  '/',
  '.',
  'open',
  'x',
  'not sure',
  'tbd',
  'keine angabe',
  'k.a.',
  'neznámá',
  'neznama',
  'neznámy',
  'nieznana',
  'nieznany',
  'okänd',
  'ukjent',
  'tuntematon',
  'невідомо',
  'невідома',
  'неизвестно',
  'неизвестна',
]);

/** Words in place of a name, by the key of a name. */
const NAMELESS =
  /^(no name|unnamed|nameless|without (a )?name|ohne namen?|namenlos|sans nom|sin nombre|bez jmena|bez mena|bez imienia|uten navn|utan namn|nimeton)$/;

export function saysUnknown(text: string): boolean {
  return UNKNOWN.has(text.trim().toLowerCase());
}

/** Keys of names met lately: a table of thousands asks for the same few over and over. */
const keys = new Map<string, string>();
const MOST_KEYS = 20_000;

/** The same name however it is written: case, spaces, accents and signs do not tell queens apart. */
export function nameKey(name: string): string {
  const known = keys.get(name);
  if (known !== undefined) return known;
  const key = plainWords(name) || name.trim().toLowerCase();
  if (keys.size >= MOST_KEYS) keys.clear();
  keys.set(name, key);
  return key;
}

/** Words for a box before its number. A nucleus is told apart from the hive of its number. */
const BOX_WORD =
  /^(?:hive|h|box|colony|volk|stock|beute|ruche|colonie|colmena|arnia|kast|bikupa|pesa|kupa|ul)?(?: ?(?:nr|no|number))? ?(?=\d)/;

/** The same label however it is written: "Hive 4", "H4", "box no. 4", "#4" and "4" are one box. */
export function labelKey(label: string): string {
  return nameKey(label).replace(BOX_WORD, '');
}

const YEAR_BEHIND =
  /^(?<name>.*\S)\s*(?:[([]\s*(?<inBrackets>(?:19|20)\d\d)\s*[)\]]|[\s,/_-]\s*(?<plain>(?:19|20)\d\d)|\s*['’](?<short>\d\d))$/u;

/** Reads a name with the year that may stand behind it. */
export function readName(text: string): NamedQueen {
  const tidy = text
    .trim()
    .replace(/^["'“”«»]+|["“”«»]+$/gu, '')
    .replace(/\s+/g, ' ')
    .trim();
  const groups = YEAR_BEHIND.exec(tidy)?.groups;
  const year = groups?.inBrackets ?? groups?.plain ?? (groups?.short ? `20${groups.short}` : undefined);
  const name = groups?.name?.replace(/[,\s]+$/, '');
  if (!year || !name) return { name: tidy };
  return { name, year: Number(year) };
}

const DESCENT_BEFORE =
  /^(?:(?:grand)?daughter of|daughter|dtr\.?(?: of)?|d\.\s*of|d\/o|d of|dau\.? of|out of|ex|f1(?: of| from|[- ])|raised from|grafted from|graft from|graft of|cells? from|cells? of|split (?:of|from|off)|from|off|tochter (?:von|der)|t\. ?v\.|fille de|hija de|figlia di|dochter van|datter (?:af|av|etter)|dotter (?:till|av|efter)|dcera(?: od| po)?|c[oó]rka(?: po| od)?|tytär)\s*(?<name>.+)$/iu;
const DESCENT_BEHIND = /^(?<name>.+?)(?:['’]s (?:daughter|dtr)|\s+(?:daughter|dtr|f1|tochter|tochter))$/iu;

/** The dam that descent words name: "daughter of Birch", "Birch F1", "ex Birch". Nothing when there are none. */
export function descentFrom(text: string): string | undefined {
  const trimmed = text.trim();
  if (/^granddaughter\b/i.test(trimmed)) return undefined;
  return (
    DESCENT_BEFORE.exec(trimmed)?.groups?.name?.trim() ?? DESCENT_BEHIND.exec(trimmed)?.groups?.name?.trim()
  );
}

/** "the queen in 3" names the queen of a box, as "3" does. */
const QUEEN_OF = /^(?:the )?(?:queen|königin|konigin) (?:in|of|from|von|in der|aus) /iu;

/** Reads a cell of a column of dams. */
export function readDam(text: string): ReadDam {
  const trimmed = text.trim();
  if (saysUnknown(trimmed)) return { is: 'unknown' };
  if (/^(granddaughter|enkelin|petite-fille|nieta)\b/i.test(trimmed)) {
    return { is: 'unclear', because: 'This names a granddam, and not the dam.' };
  }
  if (/\b(swarm|schwarm|essaim|enjambre)\b/i.test(trimmed) && !/^swarm queen$/i.test(trimmed)) {
    return { is: 'unclear', because: 'A swarm may have left with the old queen or with a daughter.' };
  }
  if (
    /^(self|selbst|itself|own|own queen|supersed\w*|emergency|swarm cells?|raised (her|their) own)$/i.test(
      trimmed,
    )
  ) {
    return { is: 'unclear', because: 'This says how she came to be, and not whose eggs they were.' };
  }
  if (
    /^(bought|purchased|buy|shop|breeder|gekauft|zukauf|achet(é|e)e?|comprada|kupiona|ostettu)$/iu.test(
      trimmed,
    )
  ) {
    return { is: 'unclear', because: 'This says where she came from, and not who her dam was.' };
  }
  const cross = /^(?<dam>.+?)\s+[x×]\s+(?<mates>.+)$/iu.exec(trimmed)?.groups;
  const said = cross?.dam ?? trimmed;
  const named = descentFrom(said) ?? said;
  const doubtful = /\?|\b(probably|maybe|perhaps|prob|likely|wahrscheinlich|vermutlich|vielleicht)\b/i.test(
    named,
  );
  const clean = named.replace(
    /\?+|\b(probably|maybe|perhaps|prob\.?|likely|wahrscheinlich|vermutlich|vielleicht)\b/gi,
    '',
  );
  const dams = clean
    .replace(/\(\s*(or|oder|ou)\s+([^()]+)\)/giu, ' $1 $2')
    .split(/\s+(?:or|oder|ou|o)\s+/iu)
    .map((dam) => readName(dam.trim().replace(QUEEN_OF, '')))
    .filter(({ name }) => !saysUnknown(name));
  if (dams.length === 0) return { is: 'unknown' };
  const mates = cross?.mates && !saysUnknown(cross.mates) ? cross.mates.trim() : undefined;
  return { is: 'named', dams, doubtful, ...(mates ? { remark: `Mated with: ${mates}` } : {}) };
}

export interface ReadQueen {
  /** Absent for a queen who is only called somebody's daughter. */
  readonly queen?: NamedQueen;
  readonly dam?: ReadDam;
  readonly remark?: string;
}

/** Reads a cell of a column of queens, in which her descent may stand too: "Elder (d. of Cedar)". */
export function readQueen(text: string): ReadQueen {
  const trimmed = text.trim();
  if (saysUnknown(trimmed) || NAMELESS.test(nameKey(trimmed))) return {};
  if (/^(no queen|queenless|keine|weisellos|sin reina)$/i.test(trimmed)) return { remark: trimmed };
  const bracket = /^(?<name>[^([]+?)\s*[([](?<inside>[^)\]]+)[)\]]\s*$/u.exec(trimmed)?.groups;
  if (bracket?.name && bracket.inside && !/^\s*(19|20)\d\d\s*$/.test(bracket.inside)) {
    const inside = bracket.inside.trim();
    if (descentFrom(inside)) return { queen: readName(bracket.name), dam: readDam(inside) };
    return { queen: readName(bracket.name), remark: inside };
  }
  const dash = /^(?<name>.+?)\s*(?:[,;:]|\s[-–—])\s*(?<rest>.+)$/u.exec(trimmed)?.groups;
  if (dash?.name && dash.rest && descentFrom(dash.rest)) {
    return { queen: readName(dash.name), dam: readDam(dash.rest) };
  }
  const inline =
    /^(?<name>.+?)\s+(?<rest>(?:daughter of|dtr\.? of|d\. of|d\/o|f1 of|f1 from|tochter von|fille de|hija de)\s.+)$/iu.exec(
      trimmed,
    )?.groups;
  if (inline?.name && inline.rest) return { queen: readName(inline.name), dam: readDam(inline.rest) };
  if (/^(?:f1|daughter|dtr|d\.|d\/o|tochter|fille|hija)\b/i.test(trimmed) && descentFrom(trimmed))
    return { dam: readDam(trimmed) };
  return { queen: readName(trimmed) };
}
