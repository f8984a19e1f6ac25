import type { PlainDay } from '../../journal/day.ts';
import type { QueenId } from '../../journal/ids.ts';
import { likelyDam, queenById, queenTitle } from '../../registry/queries.ts';
import type { Queen, Registry } from '../../registry/state.ts';
import { traitRecords } from './records.ts';
import { fateWords, makingWords, matingWords, windowWords, winterSentence } from './words.ts';

/** The pedigree of a queen as one page of plain text: who she is, her dams to the founder, what her colonies did. */
export interface PedigreePageOptions {
  readonly on: PlainDay;
  readonly by?: string;
  readonly hideYards: boolean;
  /** Most dams listed; a longer line is shortened in its middle, and says so. */
  readonly mostDams: number;
  /** Most records listed, the latest ones; 0 leaves them out. */
  readonly mostRecords: number;
}

export const PEDIGREE_PAGE_DEFAULTS = { hideYards: true, mostDams: 16, mostRecords: 14 };

/** The pedigree of one queen as a page of plain text, to be read without the app. */
export function pedigreePage(
  registry: Registry,
  id: QueenId,
  options: Partial<PedigreePageOptions> & { readonly on: PlainDay },
): string {
  const settings = { ...PEDIGREE_PAGE_DEFAULTS, ...options };
  const queen = queenById(registry, id);
  const title = `Pedigree of ${queenTitle(queen)}`;
  const told = settings.by ? `Told by ${settings.by}, ${settings.on}.` : `${settings.on}.`;
  return [
    title,
    '='.repeat(title.length),
    told,
    '',
    ...queenLines(registry, queen, settings),
    '',
    'Dams',
    '----',
    ...damLines(registry, queen, settings),
    '',
    ...recordPart(registry, queen, settings.mostRecords),
  ].join('\n');
}

function queenLines(
  registry: Registry,
  queen: Queen,
  { hideYards, on }: Pick<PedigreePageOptions, 'hideYards' | 'on'>,
): readonly string[] {
  const mark =
    queen.mark && `Marked ${queen.mark.colour}${queen.mark.number ? ` ${queen.mark.number}` : ''}.`;
  return [
    queen.born && `Emerged ${windowWords(queen.born)}.`,
    makingWords(registry, queen),
    matingWords(registry, queen, hideYards),
    winterSentence(queen, on),
    mark,
    queen.from && `From ${queen.from}.`,
    fateWords(queen),
  ].filter((line): line is string => Boolean(line));
}

/** The most likely dams one after the other, with how sure each is. */
function damLines(
  registry: Registry,
  queen: Queen,
  { hideYards, mostDams }: typeof PEDIGREE_PAGE_DEFAULTS,
): readonly string[] {
  const dams: string[] = [];
  const seen = new Set<QueenId>([queen.id]);
  let at = queen;
  for (;;) {
    const dam = likelyDam(at);
    const record = dam && registry.queens.get(dam.queen);
    if (!dam || !record || seen.has(record.id)) break;
    seen.add(record.id);
    dams.push(damWords(registry, record, dam.probability, dams.length + 1, hideYards));
    at = record;
  }
  const end = at.background
    ? `${queenTitle(at)} is the founder of this line, out of ${at.background}.`
    : `Of the dam of ${queenTitle(at)} nothing is known.`;
  return [...shortened(dams, mostDams), end];
}

function damWords(
  registry: Registry,
  dam: Queen,
  probability: number,
  generation: number,
  hideYards: boolean,
): string {
  const sure = probability >= 1 ? '' : `, probably (${Math.round(probability * 100)} %)`;
  const born = dam.born ? `, emerged ${windowWords(dam.born)}` : '';
  const mating = matingWords(registry, dam, hideYards);
  return `${generation}. ${queenTitle(dam)}${sure}${born}.${mating ? ` ${mating}` : ''}`;
}

/** The first and last lines, with a line between them that counts what is left out. */
function shortened(lines: readonly string[], most: number): readonly string[] {
  if (lines.length <= most) return lines;
  const first = Math.ceil((most - 1) / 2);
  const last = most - 1 - first;
  return [
    ...lines.slice(0, first),
    `   (${lines.length - first - last} dams between are left out here)`,
    ...lines.slice(lines.length - last),
  ];
}

function recordPart(registry: Registry, queen: Queen, most: number): readonly string[] {
  if (most <= 0) return [];
  const title = 'Records of her colonies, from when all workers were hers';
  return [title, '-'.repeat(title.length), ...recordLines(registry, queen, most), ''];
}

function recordLines(registry: Registry, queen: Queen, most: number): readonly string[] {
  const records = traitRecords(registry, queen);
  if (records.length === 0) return ['None yet.'];
  const shown = records.slice(-most).map(({ day, words }) => `${day}  ${words}`);
  const earlier = records.length - shown.length;
  return earlier > 0 ? [`(${earlier} earlier ones are left out here)`, ...shown] : shown;
}
