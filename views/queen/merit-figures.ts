import { type IndexValue, weightedIndex } from '../../graph/merit/index-of-traits.ts';
import type { TraitId } from '../../graph/merit/traits/trait.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { Evaluated } from '../../src/store/index.ts';

/** What the evaluation says of one queen, as the section on her worth shows it. */
export interface MeritFigures {
  /** "2nd of 14 living queens". */
  readonly placeWords: string;
  /** "fairly sure", "a guess". */
  readonly sureWords: string;
  /** The index with its standard error and reliability. */
  readonly figureWords: string;
  /** Points of the index that come of each trait, largest first, and how sure they are. */
  readonly parts: readonly { readonly trait: TraitId; readonly points: string; readonly sure: string }[];
}

/** By the keeper's weights; undefined where she is not among the queens evaluated, or nobody is there to compare with. */
export function meritFigures(
  { work, answer }: Pick<Evaluated, 'work' | 'answer'>,
  queen: QueenId,
  weights: Parameters<typeof weightedIndex>[1],
): MeritFigures | undefined {
  const { queens, traits } = answer.evaluation;
  const index = weightedIndex(traits, weights, answer.diagonal);
  const hers = index[queens.indexOf(queen)];
  if (!hers || hers.contributions.length === 0) return undefined;
  const values = new Map(queens.map((id, at) => [id, index[at]?.index ?? Number.NEGATIVE_INFINITY]));
  const better = work.candidates.filter((id) => id !== queen && (values.get(id) ?? 0) > hers.index).length;
  const among = work.candidates.filter((id) => id !== queen).length;
  const living = work.candidates.includes(queen);
  if (!living && among === 0) return undefined;
  return {
    placeWords: placeWords(better, among, living),
    sureWords: sureWords(hers.reliability),
    figureWords: figureWords(hers),
    parts: hers.contributions.map(({ trait, points, reliability }) => ({
      trait,
      points: signed(points),
      sure: sureWords(reliability),
    })),
  };
}

function placeWords(better: number, among: number, living: boolean): string {
  if (!living) return `Better than ${among - better} of the ${among} queens who lay now`;
  return among === 0 ? 'The only queen who lays now' : `${ordinal(better + 1)} of ${among + 1} living queens`;
}

/** How far a reliability, 0 to 1, goes, in words. Where the words change is our own choice. */
export function sureWords(reliability: number): string {
  if (reliability < 0.1) return 'a guess';
  if (reliability < 0.25) return 'very unsure';
  if (reliability < 0.45) return 'unsure';
  return reliability < 0.65 ? 'fairly sure' : 'sure';
}

function figureWords({ index, standardError, reliability }: IndexValue): string {
  const percent = Math.round(100 * reliability);
  return (
    `Index ${signed(index)} with a standard error of ${standardError.toFixed(1)}, reliability ${percent}\u00a0%, by the ` +
    'weights set on Choose. A point is one genetic standard deviation of a trait, times its weight.'
  );
}

function signed(points: number): string {
  const text = Math.abs(points).toFixed(1);
  return text === '0.0' ? '0.0' : `${points < 0 ? '−' : '+'}${text}`;
}

export function ordinal(place: number): string {
  const tens = place % 100;
  const ending = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][place % 10] ?? 'th');
  return `${place}${ending}`;
}
