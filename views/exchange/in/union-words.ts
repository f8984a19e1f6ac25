import { count, list } from '../../parts/words.ts';
import type { PreviewedUnion } from './union.ts';

/** What a file of records would change, in a sentence: "14 entries are new, 398 you have already." */
export function unionWords(
  { preview, altered }: Pick<PreviewedUnion, 'preview' | 'altered'>,
  photos: number,
): string {
  const { added, same, disagreements, contradictions } = preview;
  const parts = [
    added.length > 0
      ? `${count(added.length, 'entry', 'entries')} ${added.length === 1 ? 'is' : 'are'} new`
      : '',
    photos > 0 ? `${count(photos, 'photograph')} ${photos === 1 ? 'is' : 'are'} new` : '',
    same > 0 ? `${same.toLocaleString('en')} you have already` : '',
    altered.length > 0
      ? `${count(altered.length, 'entry', 'entries')} ${altered.length === 1 ? 'was' : 'were'} altered and ${altered.length === 1 ? 'stays' : 'stay'} out`
      : '',
  ].filter(Boolean);
  const against = [
    disagreements.length > 0 ? `on ${count(disagreements.length, 'entry', 'entries')} you disagree` : '',
    contradictions.length > 0
      ? `${count(contradictions.length, 'contradiction')} would stand between your records`
      : '',
  ].filter(Boolean);
  const first = parts.length > 0 ? list(parts) : 'There is nothing in it';
  const nothing = added.length === 0 && photos === 0 && altered.length === 0;
  return [
    `${first.charAt(0).toUpperCase()}${first.slice(1)}.`,
    nothing && same > 0 ? 'There is nothing to take in.' : '',
    against.length > 0 ? `${capital(list(against))}.` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
