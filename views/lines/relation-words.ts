import type { Relation } from '../../graph/lineage/relation.ts';
import { finePercents } from '../parts/percents.ts';
import { count, sentence } from '../parts/words.ts';

/** How two queens are related, in sentences. */

export interface RelationNames {
  readonly first: string;
  readonly second: string;
  /** Name of the nearest common dam, where there is one. */
  readonly commonDam?: string | undefined;
}

/** What the first queen is to the second, by their dams. */
export function relationSentence(relation: Relation, names: RelationNames): string {
  const { first, second } = names;
  const common = names.commonDam ?? 'a dam without a name';
  switch (relation.code) {
    case 'self':
      return `${first} is chosen twice.`;
    case 'dam':
      return `${first} is the dam of ${second}.`;
    case 'daughter':
      return `${first} is a daughter of ${second}.`;
    case 'granddam':
      return `${first} is the granddam of ${second}.`;
    case 'granddaughter':
      return `${first} is a granddaughter of ${second}.`;
    case 'ancestor':
      return `${first} is an ancestor of ${second}, ${generations(relation.fromSecond)} back.`;
    case 'descendant':
      return `${first} descends from ${second}, ${generations(relation.fromFirst)} on.`;
    case 'sister':
      return `${first} and ${second} are sisters, daughters of ${common}${relation.sameMaking ? ', made by the same event' : ''}.`;
    case 'aunt':
      return `${first} is an aunt of ${second}: ${common} is the dam of the one and the granddam of the other.`;
    case 'niece':
      return `${first} is a niece of ${second}: ${common} is the granddam of the one and the dam of the other.`;
    case 'cousin':
      return `${first} and ${second} are cousins: ${common} is the granddam of both.`;
    case 'common-dam':
      return `Both go back to ${common}: ${first} by ${generations(relation.fromFirst)}, ${second} by ${generations(relation.fromSecond)}.`;
    case 'drone-side':
      return 'No common dam on record. Their dams met drones of the same source.';
    case 'none':
      return 'No common dam on record, and no drones of the same source.';
  }
}

/** How sure that is. */
export function relationCertainty({ code, probability }: Relation): string | undefined {
  if (code === 'self' || code === 'drone-side' || code === 'none') return undefined;
  if (probability >= 1) return 'Every dam on the way is firm.';
  return `Holds with a probability of ${finePercents(probability)}: a dam on the way is not firm.`;
}

function generations(steps = 0): string {
  return count(steps, 'generation');
}

/**
 * Kinship of pairs every breeder knows, among queens that are not inbred and whose mates are unrelated. Sisters by
 * different drones 1/8, mother and daughter 1/4, sisters by one drone 3/8: haplodiploid relatedness halved (see
 * `graph/kinship`); aunts and cousins through such half-sisters a half and a quarter of 1/8.
 */
const KNOWN_PAIRS: readonly { readonly kinship: number; readonly words: string }[] = [
  { kinship: 1 / 32, words: 'cousins' },
  { kinship: 1 / 16, words: 'aunt and niece' },
  { kinship: 1 / 8, words: 'sisters by different drones' },
  { kinship: 1 / 4, words: 'dam and daughter' },
  { kinship: 3 / 8, words: 'sisters by one drone' },
];

/** What a kinship means: beside pairs every breeder knows, and for a daughter of the two. */
export function kinshipSentence(kinship: number): string {
  if (kinship < 0.002) return 'As good as unrelated, as far as the records reach.';
  const near = KNOWN_PAIRS.reduce((best, pair) =>
    Math.abs(pair.kinship - kinship) < Math.abs(best.kinship - kinship) ? pair : best,
  );
  const ratio = kinship / near.kinship;
  const how =
    ratio > 1.15
      ? 'closer than'
      : ratio < 0.6
        ? 'much looser than'
        : ratio < 0.87
          ? 'looser than'
          : 'about as close as';
  return `${sentence(how)} ${near.words}. A daughter of one by a drone of the other is expected ${finePercents(kinship)} inbred.`;
}
