import { list, sentence } from '../../parts/words.ts';
import { counted } from '../counted.ts';
import type { PreviewedUnion } from './union.ts';

const are = (count: number) => (count === 1 ? 'is' : 'are');

/** What a file of records would change: "14 entries are new, 398 you have already. You disagree on 1 entry." */
export function unionWords(
  { preview, altered }: Pick<PreviewedUnion, 'preview' | 'altered'>,
  photos: number,
): string {
  const { added, same, disagreements, contradictions } = preview;
  const parts = [
    added.length > 0 && `${counted(added.length, 'entry', 'entries')} ${are(added.length)} new`,
    photos > 0 && `${counted(photos, 'photograph')} ${are(photos)} new`,
    same > 0 && `${same.toLocaleString('en')} you have already`,
  ].filter((part) => part !== false);
  const nothing = added.length === 0 && photos === 0;
  return [
    parts.length > 0 && `${sentence(list(parts))}.`,
    nothing && 'There is nothing to take in.',
    altered.length > 0 &&
      `${counted(altered.length, 'entry', 'entries')} ${altered.length === 1 ? 'was altered and stays' : 'were altered and stay'} out.`,
    disagreements.length > 0 && `You disagree on ${counted(disagreements.length, 'entry', 'entries')}.`,
    contradictions.length > 0 &&
      `${counted(contradictions.length, 'thing')} ${contradictions.length === 1 ? 'does' : 'do'} not fit together.`,
  ]
    .filter(Boolean)
    .join(' ');
}

/**
 * Entries of this keeper's own that come in from elsewhere: as a rule what was told with a pedigree, on its way back.
 * Empty when there are none.
 */
export function ownWords(own: number, added: number): string {
  if (own === 0) return '';
  if (own === added) return 'You wrote all of them yourself.';
  return `You wrote ${own.toLocaleString('en')} of them yourself: what you tell with a pedigree comes back with the file.`;
}
