import { readTable, type Table } from '../../../src/exchange/intake/index.ts';
import { type JournalFile, readJournalFile } from '../../../src/exchange/journal-file/index.ts';
import type { Problem } from '../../../src/journal/problems.ts';

/** Something that a keeper chose, dropped or pasted, read as far as it goes. Nothing is written by reading. */
export type Incoming =
  | { readonly is: 'journal'; readonly name: string; readonly text: string; readonly file: JournalFile }
  | { readonly is: 'table'; readonly name: string; readonly table: Table }
  | { readonly is: 'refused'; readonly name: string; readonly problems: readonly Problem[] };

export const PASTED = 'What was pasted';

/** Tells a file of records from a table by its content; its name is only for the keeper. */
export function readIncoming(text: string, name: string): Incoming {
  const clean = text.replace(/^\uFEFF/, '');
  const problem = noText(clean, name);
  if (problem) return { is: 'refused', name, problems: [problem] };
  if (!/^\s*[{[]/.test(clean)) return { is: 'table', name, table: readTable(clean) };
  const read = readJournalFile(clean, name);
  if (!read.ok) return { is: 'refused', name, problems: read.problems };
  return { is: 'journal', name, text: clean, file: read.value };
}

function noText(text: string, name: string): Problem | undefined {
  if (text.trim() === '') {
    return {
      code: 'not-a-journal',
      where: name,
      found: 'nothing',
      because: 'There is nothing in it.',
      remedy: 'Choose another file, or copy the cells once more.',
    };
  }
  if (text.startsWith('PK\u0003\u0004')) {
    return {
      code: 'not-a-journal',
      where: name,
      found: 'a workbook or another packed file',
      because: 'A workbook of a spreadsheet program is not plain text.',
      remedy: 'Open it there and save the sheet as CSV, or copy its cells and paste them here.',
    };
  }
  if (text.includes('\0') || /^(%PDF|\u0089PNG|GIF8)/.test(text)) {
    return {
      code: 'not-a-journal',
      where: name,
      found: 'a picture or another file that is not text',
      because: 'Only a file of records, a CSV table or pasted cells can be read.',
      remedy: 'Choose a file that ends in .damline.json or .csv.',
    };
  }
  return undefined;
}

/**
 * The text of a file: UTF-8, or UTF-16 by its byte order mark; what is neither is read as Windows-1252, in which older
 * spreadsheet programs save (WHATWG Encoding Standard).
 */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** The line of the file on which an entry stands, counted from 1; nothing when it is not in the file. */
export function lineOfEntry(text: string, id: string): number | undefined {
  const at = new RegExp(`"id"\\s*:\\s*"${id}"`).exec(text)?.index;
  if (at === undefined) return undefined;
  let line = 1;
  for (let next = text.indexOf('\n'); next >= 0 && next < at; next = text.indexOf('\n', next + 1)) line += 1;
  return line;
}
