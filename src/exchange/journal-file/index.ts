export {
  JOURNAL_FILE_END,
  JOURNAL_FORMAT,
  type JournalFile,
  type JournalFileBy,
  type JournalFileScope,
  type Photo,
} from './format.ts';
export { readJournalFile } from './read.ts';
export { journalFileName, plainWord, writeJournalFile } from './write.ts';
