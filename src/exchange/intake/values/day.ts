import { type PlainDay, RoughDay } from '../../../journal/day.ts';
import { plainWords } from '../plain-words.ts';

/** Days as keepers write them. A season or a year gives the year: no more is known. */

/** Which of two numbers is the day, in 5/14/2024 and 14/5/2024. */
export type DayOrder = 'day-first' | 'month-first';

export type ReadDay =
  | { readonly is: 'day'; readonly day: RoughDay; readonly remark?: string }
  /** Both orders give a day. */
  | { readonly is: 'either'; readonly dayFirst: RoughDay; readonly monthFirst: RoughDay }
  | { readonly is: 'unreadable'; readonly because: string };

/** Names of the months in a dozen languages, from memory, and the Roman numerals by which some write them. */
const MONTHS: readonly (readonly string[])[] = [
  'jan january januar janner janvier janv enero ene gennaio januari leden ledna stycznia styczen tammikuu i'.split(
    ' ',
  ),
  'feb february februar fevrier fev febrero febbraio februari unor unora lutego luty helmikuu ii'.split(' '),
  'mar march marz mars maerz marzo maart mrz brezen brezna marca marzec marts maaliskuu iii'.split(' '),
  'apr april avril avr abril abr aprile duben dubna kwietnia kwiecien huhtikuu iv'.split(' '),
  'may mai mayo maggio mei maj kveten kvetna maja toukokuu v'.split(' '),
  'jun june juni juin junio giugno cerven cervna czerwca czerwiec kesakuu vi'.split(' '),
  'jul july juli juillet juil julio luglio cervenec cervence lipca lipiec heinakuu vii'.split(' '),
  'aug august aout agosto augustus augusti ago srpen srpna sierpnia sierpien elokuu viii'.split(' '),
  'sep sept september septembre septiembre settembre zari wrzesnia wrzesien syyskuu ix'.split(' '),
  'oct october oktober octobre octubre ottobre okt rijen rijna pazdziernika pazdziernik lokakuu x'.split(' '),
  'nov november novembre noviembre listopad listopadu listopada marraskuu xi'.split(' '),
  'dec december dezember decembre diciembre dicembre dez dic desember prosinec prosince grudnia grudzien joulukuu xii'.split(
    ' ',
  ),
];
const MONTH_OF = new Map(MONTHS.flatMap((names, index) => names.map((name) => [name, index + 1] as const)));
const SEASON =
  /^(early|late|mid)?\s*(spring|summer|autumn|fall|winter|fruhjahr|fruhling|sommer|herbst|printemps|ete|automne|primavera|verano|otono)\s+(of\s+)?(?<year>\d{4}|\d{2})$/;
/** Day numbers that spreadsheets keep dates as: 30 December 1899 is day 0. From 1982 to 2064 here. */
const SERIAL = { first: 30_000, last: 60_000, dayZero: Date.UTC(1899, 11, 30) };

/** Reads a day; `today` settles which century two digits are of. */
export function readDay(text: string, today: PlainDay, order?: DayOrder): ReadDay {
  const trimmed = text.trim().replace(/^(ca\.?|about|around|approx\.?|~|c\.)\s*/i, '');
  const read = readNumeric(trimmed, today, order) ?? readWorded(trimmed, today) ?? unreadable(text);
  if (read.is !== 'day' || trimmed === text.trim()) return read;
  return { ...read, remark: `written as "${text.trim()}"` };
}

function unreadable(text: string): ReadDay {
  if (/^\s*\d{1,2}[./-]\d{1,2}[.]?\s*$/.test(text))
    return { is: 'unreadable', because: 'The year is missing.' };
  return {
    is: 'unreadable',
    because: text.trim() === '' ? 'There is no day.' : 'This is no day, month or year.',
  };
}

function readNumeric(text: string, today: PlainDay, order?: DayOrder): ReadDay | undefined {
  const iso = /^(\d{4})[-/.](\d{1,2})(?:[-/.](\d{1,2}))?(?:[T ][\d:.Z]*)?$/.exec(text);
  if (iso) return made(iso[1], iso[2], iso[3]);
  const year = /^['’]?(\d{4}|\d{2})$/.exec(text);
  if (year && (text.length !== 2 || Number(text) > 12)) return made(fullYear(year[1] ?? '', today));
  const monthYear = /^(\d{1,2})[-/.](\d{4})$/.exec(text);
  if (monthYear) return made(monthYear[2], monthYear[1]);
  if (/^\d{5}$/.test(text)) return readSerial(Number(text));
  const three = /^(\d{1,2})\s*([./-])\s*(\d{1,2})\s*[./-]\s*(\d{4}|\d{2})$/.exec(text);
  if (!three) return undefined;
  const [, first = '', sign, second = '', short = ''] = three;
  return ordered(first, second, fullYear(short, today), sign === '.' ? 'day-first' : order);
}

function ordered(first: string, second: string, year: string, order?: DayOrder): ReadDay {
  const dayFirst = made(year, second, first);
  const monthFirst = made(year, first, second);
  if (monthFirst.is !== 'day') return dayFirst;
  if (dayFirst.is !== 'day') return monthFirst;
  if (order) return order === 'day-first' ? dayFirst : monthFirst;
  if (dayFirst.day === monthFirst.day) return dayFirst;
  return { is: 'either', dayFirst: dayFirst.day, monthFirst: monthFirst.day };
}

function readSerial(serial: number): ReadDay | undefined {
  if (serial < SERIAL.first || serial > SERIAL.last) return undefined;
  const day = new Date(SERIAL.dayZero + serial * 86_400_000).toISOString().slice(0, 10);
  return { is: 'day', day: day as RoughDay, remark: `read from the day number ${serial} of a spreadsheet` };
}

function readWorded(text: string, today: PlainDay): ReadDay | undefined {
  const words = plainWords(text);
  const season = SEASON.exec(words);
  if (season) {
    const read = made(fullYear(season.groups?.year ?? '', today));
    return read.is === 'day' ? { ...read, remark: `written as "${text.trim()}"` } : read;
  }
  const parts = words
    .replace(/(\d)(st|nd|rd|th)\b/g, '$1')
    .split(' ')
    .filter((part) => part !== 'of' && part !== 'de')
    // A Finnish month bears the ending of its case.
    .map((part) => part.replace(/kuu(?:ta|n|ssa)$/, 'kuu'));
  const months = parts.filter((part) => MONTH_OF.has(part));
  const numbers = parts.filter((part) => /^\d{1,4}$/.test(part));
  if (months.length !== 1 || months.length + numbers.length !== parts.length) return undefined;
  const month = String(MONTH_OF.get(months[0] ?? ''));
  if (numbers.length === 1) return made(fullYear(numbers[0] ?? '', today), month);
  const [first = '', second = ''] = numbers;
  if (numbers.length !== 2) return undefined;
  return first.length === 4 ? made(first, month, second) : made(fullYear(second, today), month, first);
}

/** Two digits are of this century up to the year to come, else of the one before. */
function fullYear(text: string, today: PlainDay): string {
  if (text.length !== 2) return text;
  const century = Number(today.slice(0, 2));
  return Number(text) <= Number(today.slice(2, 4)) + 1 ? `${century}${text}` : `${century - 1}${text}`;
}

function made(year = '', month?: string, day?: string): ReadDay {
  const text = [year, month, day]
    .flatMap((part) => (part === undefined ? [] : [part.padStart(2, '0')]))
    .join('-');
  const parsed = RoughDay.safeParse(text);
  const plausible = Number(year) >= 1950 && Number(year) <= 2150;
  if (!parsed.success || !plausible) return { is: 'unreadable', because: 'There is no such day.' };
  return { is: 'day', day: parsed.data };
}

/** The month that words name among others, such as "Frames in April". Roman numerals are none here. */
export function monthIn(text: string): number | undefined {
  const months = plainWords(text)
    .split(' ')
    .flatMap((word) => (word.length > 2 ? (MONTH_OF.get(word) ?? []) : []));
  return months.length === 1 ? months[0] : undefined;
}

/** The order that the cells of a column prove, by one in which only one order gives a day. */
export function provenOrder(cells: readonly string[]): DayOrder | 'both' | undefined {
  const proofs = new Set<DayOrder>();
  for (const cell of cells) {
    const match = /^\s*(\d{1,2})\s*[/-]\s*(\d{1,2})\s*[/-]\s*(\d{4}|\d{2})\s*$/.exec(cell);
    if (!match) continue;
    if (Number(match[1]) > 12 && Number(match[2]) <= 12) proofs.add('day-first');
    if (Number(match[2]) > 12 && Number(match[1]) <= 12) proofs.add('month-first');
  }
  if (proofs.size === 2) return 'both';
  return [...proofs][0];
}
