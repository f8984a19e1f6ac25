import { canonicalText } from '../../journal/journal.ts';
import { JOURNAL_VERSION } from '../../journal/migrations/index.ts';
import { toBase64 } from './base64.ts';
import { JOURNAL_FILE_END, JOURNAL_FORMAT, type JournalFile } from './format.ts';

/** The text of a journal file. Equal contents give equal bytes. */
export function writeJournalFile({ exported, by, scope, entries, photos }: JournalFile): string {
  const entryLines = byId(entries).map((entry) => canonicalText(entry));
  const photoLines = byId(photos).map(({ id, type, bytes }) =>
    canonicalText({ id, type, base64: toBase64(bytes) }),
  );
  const parts = [
    `"format": ${JSON.stringify(JOURNAL_FORMAT)}`,
    `"version": ${JOURNAL_VERSION}`,
    `"exported": ${JSON.stringify(exported)}`,
    `"by": ${canonicalText(by)}`,
    `"scope": ${canonicalText(scope)}`,
    `"entries": ${lines(entryLines)}`,
    ...(photoLines.length > 0 ? [`"photos": ${lines(photoLines)}`] : []),
  ];
  return `{\n${parts.join(',\n')}\n}\n`;
}

function byId<T extends { readonly id: string }>(list: readonly T[]): readonly T[] {
  return [...list].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
}

function lines(texts: readonly string[]): string {
  return texts.length === 0 ? '[]' : `[\n${texts.join(',\n')}\n]`;
}

/** A name for the file: `damline-2026-06-01.damline.json`, or with the queen's name for a pedigree. */
export function journalFileName({ scope, exported }: Pick<JournalFile, 'scope' | 'exported'>): string {
  const subject = scope.of === 'queen' ? `queen-${plainWord(scope.name)}` : 'records';
  return `${subject}-${exported.slice(0, 10)}${JOURNAL_FILE_END}`;
}

/** A word that every file system takes. */
export function plainWord(text: string): string {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return plain === '' ? 'unnamed' : plain;
}
