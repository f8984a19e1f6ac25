import type { Entry } from '../../journal/entry.ts';
import { JOURNAL_VERSION } from '../../journal/migrations/index.ts';
import type { Problem } from '../../journal/problems.ts';
import { JOURNAL_FORMAT } from './format.ts';

/** What can be wrong with a journal file, in words for a keeper. */

/** Names the file and line of a path in it, or of an offset. */
export type Place = (path: string | number) => string;
export type JsonRecord = Readonly<Record<string, unknown>>;

export function isRecord(value: unknown): value is JsonRecord {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

export function shortText(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

export function brokenText(json: string, faultAt: number, place: Place): Problem {
  const line = (json.slice(faultAt).split('\n', 1)[0] ?? '').trim();
  return {
    code: 'not-a-journal',
    where: place(faultAt),
    found: line === '' ? 'the end of the line or of the file' : shortText(line),
    because: 'From here on the file cannot be read: it was cut short or changed.',
    remedy: 'Bring in an unchanged copy; ask for the file to be sent again as an attachment.',
  };
}

export function brokenPhoto(where: string): Problem {
  return {
    code: 'field-invalid',
    where,
    field: 'base64',
    found: 'text that is not base64',
    because: 'The photograph cannot be read.',
    remedy: 'Bring in an unchanged copy of the file.',
  };
}

export function otherFile(content: unknown, place: Place): Problem {
  const format = isRecord(content) ? content.format : undefined;
  return {
    code: 'not-a-journal',
    where: place('format'),
    field: 'format',
    found: format === undefined ? 'JSON without a format' : shortText(format),
    because: `This is not a file of records: its format must be "${JOURNAL_FORMAT}".`,
    remedy: 'Choose a file that ends in .damline.json, or a table saved as CSV.',
  };
}

export function badVersion(version: unknown, place: Place): Problem {
  return {
    code: 'not-a-journal',
    where: place('version'),
    field: 'version',
    found: shortText(version),
    because: 'The version must be a whole number, 1 or more.',
    remedy: 'Export the file again from the app that wrote it.',
  };
}

export function newerFile(version: number, place: Place): Problem {
  return {
    code: 'newer-than-this-app',
    where: place('version'),
    field: 'version',
    found: String(version),
    because: `The file was written by a newer Damline; this one reads versions up to ${JOURNAL_VERSION}.`,
    remedy: 'Reload this page while online to get the newer Damline, then bring the file in again.',
  };
}

export function unknownKind(kind: string, where: string): Problem {
  return {
    code: 'newer-than-this-app',
    where,
    field: 'kind',
    found: shortText(kind),
    because: 'This app does not know this kind of entry; a newer one may have written it.',
    remedy: 'Reload this page while online to get the newer Damline, then bring the file in again.',
  };
}

export function unknownField(field: string, path: string, place: Place): Problem {
  return {
    code: 'newer-than-this-app',
    where: place(`${path}/${field.split('.')[0]}`),
    field,
    found: 'a field that this app does not know',
    because: 'Reading on would lose what it says.',
    remedy: 'Reload this page while online to get the newer Damline, then bring the file in again.',
  };
}

export function twoContents(entry: Entry, where: string): Problem {
  return {
    code: 'entry-altered',
    where,
    field: 'id',
    found: entry.id,
    because: 'The file holds this entry twice with different contents.',
    remedy: 'Bring in an unchanged copy of the file.',
  };
}

export function noList(name: string, value: unknown, place: Place): Problem {
  return {
    code: 'not-a-journal',
    where: place(name),
    field: name,
    found: shortText(value),
    because: `"${name}" must be a list.`,
    remedy: 'Export the file again from the app that wrote it.',
  };
}
