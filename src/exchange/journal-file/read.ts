import type * as z from 'zod';
import { Entry } from '../../journal/entry.ts';
import { mustBe } from '../../journal/issue-words.ts';
import { canonicalText } from '../../journal/journal.ts';
import { JOURNAL_VERSION, migrateEntry } from '../../journal/migrations/index.ts';
import { failure, type Problem, type Result, success } from '../../journal/problems.ts';
import { readEntry } from '../../journal/write.ts';
import { fromBase64 } from './base64.ts';
import {
  badVersion,
  brokenPhoto,
  brokenText,
  isRecord,
  type JsonRecord,
  newerFile,
  noList,
  otherFile,
  type Place,
  shortText,
  twoContents,
  unknownField,
  unknownKind,
} from './file-problems.ts';
import { FilePhoto, JOURNAL_FORMAT, type JournalFile, JournalFileHead, type Photo } from './format.ts';
import { jsonPlaces, lineFinder } from './json-places.ts';

/**
 * Reads a journal file whole, or not at all: with one fault nothing comes back but every problem, each with its
 * line. A file of a newer app, or with a kind of entry or a field that this app does not know, is refused.
 */
export function readJournalFile(text: string, fileName: string): Result<JournalFile> {
  const json = text.replace(/^\uFEFF/, '');
  const place = placeFinder(json, fileName);
  let content: unknown;
  try {
    content = JSON.parse(json);
  } catch {
    return failure([brokenText(json, jsonPlaces(json, 0).faultAt ?? 0, place)]);
  }
  if (!isRecord(content) || content.format !== JOURNAL_FORMAT) return failure([otherFile(content, place)]);
  const version = content.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failure([badVersion(version, place)]);
  }
  if (version > JOURNAL_VERSION) return failure([newerFile(version, place)]);
  return readContent(content, version, place);
}

/** The text is searched for places only when the first problem asks for one. */
function placeFinder(json: string, fileName: string): Place {
  let find: ((path: string | number) => number) | undefined;
  const prepare = () => {
    const { places } = jsonPlaces(json, 3);
    const line = lineFinder(json);
    return (path: string | number) => {
      if (typeof path === 'number') return line(path);
      const parent = path.split('/').slice(0, 2).join('/');
      return line(places.get(path) ?? places.get(parent) ?? 0);
    };
  };
  return (path) => {
    find ??= prepare();
    return `${fileName}, line ${find(path)}`;
  };
}

function readContent(content: JsonRecord, version: number, place: Place): Result<JournalFile> {
  const head = JournalFileHead.safeParse(content);
  const problems: Problem[] = head.success ? [] : issueProblems(head.error, '', content, place);
  const entries = readEntries(content.entries, version, place, problems);
  const photos = readPhotos(content.photos, place, problems);
  if (problems.length > 0 || !head.success) return failure(problems);
  return success({ ...head.data, entries, photos });
}

function readEntries(value: unknown, version: number, place: Place, problems: Problem[]): readonly Entry[] {
  if (!Array.isArray(value)) {
    problems.push(noList('entries', value, place));
    return [];
  }
  const entries = new Map<string, Entry>();
  value.forEach((raw: unknown, index) => {
    const path = `entries/${index}`;
    const read = readOne(migrateEntry(raw, version), path, place);
    if (!read.ok) {
      problems.push(...read.problems);
      return;
    }
    const twin = entries.get(read.value.id);
    if (twin && canonicalText(twin) !== canonicalText(read.value))
      problems.push(twoContents(read.value, place(path)));
    entries.set(read.value.id, read.value);
  });
  return [...entries.values()];
}

const KINDS: ReadonlySet<unknown> = new Set(Entry.options.map((option) => option.shape.kind.value));

function readOne(raw: unknown, path: string, place: Place): Result<Entry> {
  if (isRecord(raw) && typeof raw.kind === 'string' && !KINDS.has(raw.kind)) {
    return failure([unknownKind(raw.kind, place(`${path}/kind`))]);
  }
  const read = readEntry(raw, place(path));
  if (!read.ok) {
    return failure(
      read.problems.map((problem) => ({
        ...problem,
        where: place(`${path}/${problem.field?.split('.')[0] ?? ''}`),
      })),
    );
  }
  const lost = lostFields(raw, read.value, '');
  if (lost.length > 0) return failure(lost.map((field) => unknownField(field, path, place)));
  return read;
}

/** Fields that the schema let fall: they were written by an app that knows more. */
function lostFields(raw: unknown, read: unknown, path: string): readonly string[] {
  if (Array.isArray(raw) && Array.isArray(read)) {
    return raw.flatMap((each, index) => lostFields(each, read[index], `${path}${index}.`));
  }
  if (!isRecord(raw) || !isRecord(read)) return [];
  return Object.keys(raw).flatMap((key) =>
    Object.hasOwn(read, key) ? lostFields(raw[key], read[key], `${path}${key}.`) : [`${path}${key}`],
  );
}

function readPhotos(value: unknown, place: Place, problems: Problem[]): readonly Photo[] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) {
    problems.push(noList('photos', value, place));
    return [];
  }
  return value.flatMap((raw: unknown, index) => {
    const path = `photos/${index}`;
    const read = FilePhoto.safeParse(raw);
    if (!read.success) {
      problems.push(...issueProblems(read.error, `${path}/`, raw, place));
      return [];
    }
    const bytes = fromBase64(read.data.base64);
    if (bytes) return [{ id: read.data.id, type: read.data.type, bytes }];
    problems.push(brokenPhoto(place(`${path}/base64`)));
    return [];
  });
}

function issueProblems(error: z.ZodError, path: string, raw: unknown, place: Place): Problem[] {
  return error.issues.map((issue) => {
    const field = issue.path.join('.');
    const found = issue.path.reduce<unknown>(
      (value, key) => (isRecord(value) ? value[String(key)] : undefined),
      raw,
    );
    return {
      code: 'field-invalid',
      where: place(`${path}${issue.path.join('/')}`),
      field,
      found: shortText(found),
      because: `"${field}" ${mustBe(issue, found)}, or the file cannot be read.`,
      remedy: 'Export the file again from the app that wrote it.',
    };
  });
}
