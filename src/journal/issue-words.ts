import type * as z from 'zod';
import type { EntryKind } from './entry.ts';
import { ENTRY_KINDS, type Field, fieldsOf, type Shape } from './fields.ts';
import type { Problem } from './problems.ts';

/** What the schemas find wrong, in sentences for a keeper: which field, what stands there, what it must be, what to do. */

type Issue = z.core.$ZodIssue;

/** One fault of a value that should be an entry. `where` names its place: file and line, row, or kind and day. */
export function issueProblem(issue: Issue, value: unknown, where: string): Problem {
  const found = valueAt(value, issue.path);
  const field = fieldAt(value, issue.path);
  return {
    code: 'field-invalid',
    where,
    field: issue.path.join('.') || 'kind',
    found: shortText(found),
    because: `${nameOf(issue, field)} ${mustBe(issue, found)}.`,
    remedy: remedyFor(issue, found, field),
  };
}

function nameOf({ path }: Issue, field: Field | undefined): string {
  const last = path.findLast((key) => typeof key === 'string');
  return `"${field?.label ?? last ?? 'The entry'}"`;
}

function remedyFor({ path }: Issue, found: unknown, field: Field | undefined): string {
  if (path.length === 0) return 'Bring in an unchanged copy of the file.';
  if (!field) return 'Correct this field, or bring in an unchanged copy of the file.';
  if (field.optional) return 'Correct this field, or leave it out if it is not known.';
  return found === undefined ? 'Fill this field in.' : 'Correct this field.';
}

/** What a value must be and is not: "must be 4 at most". */
export function mustBe(issue: Issue, found: unknown): string {
  const missing = found === undefined ? 'is missing; it ' : '';
  switch (issue.code) {
    case 'invalid_type':
      return `${missing}must be ${TYPES[issue.expected] ?? `a ${issue.expected}`}`;
    case 'invalid_value':
      return `${missing}must be ${oneOf(issue.values)}`;
    case 'too_big':
      return `must ${bounded(issue.origin, issue.maximum, issue.inclusive === false ? 'less than' : 'at most')}`;
    case 'too_small':
      return `must ${bounded(issue.origin, issue.minimum, issue.inclusive === false ? 'more than' : 'at least')}`;
    case 'not_multiple_of':
      return `must go in steps of ${issue.divisor}`;
    case 'invalid_format':
      return `${missing}must be ${FORMATS[issue.format] ?? `written as ${issue.format}`}`;
    case 'invalid_union':
      return `${missing}must be ${oneOf(optionsOf(issue))}`;
    case 'unrecognized_keys':
      return `must not hold ${issue.keys.map((key) => `"${key}"`).join(', ')}`;
    case 'invalid_key':
    case 'invalid_element':
      return 'holds something that does not belong there';
    case 'custom':
      return `${missing}must be ${issue.message}`;
  }
}

const TYPES: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'yes or no',
  array: 'a list',
  object: 'a group of fields',
};

const FORMATS: Readonly<Record<string, string>> = {
  uuid: 'an id as this app makes them (UUID, version 7)',
  uuidv7: 'an id as this app makes them (UUID, version 7)',
  datetime: 'a moment in UTC, written 2026-05-14T12:00:00Z',
};

type Bound = 'at most' | 'less than' | 'at least' | 'more than';

/** "be 4 at most", "name at least one": a bound of a number, a text or a list. */
function bounded(origin: string, bound: number | bigint, how: Bound): string {
  if (origin === 'string') return bound === 1 ? 'not be empty' : `have ${how} ${bound} letters`;
  if (origin === 'array') return `name ${how} ${bound === 1 ? 'one' : bound}`;
  if (how === 'at most') return `be ${bound} at most`;
  return how === 'at least' ? `be ${bound} or more` : `be ${how} ${bound}`;
}

function oneOf(options: readonly unknown[]): string {
  const words = options.map((option) => `"${String(option)}"`);
  if (words.length === 0) return 'a kind that this app knows';
  return words.length === 1 ? `${words[0]}` : `one of ${words.join(', ')}`;
}

function optionsOf(issue: z.core.$ZodIssueInvalidUnion): readonly unknown[] {
  if (issue.path.length === 1 && issue.path[0] === 'kind') return [];
  return 'options' in issue && issue.options ? issue.options : [];
}

/** The field that a path leads to, as the forms know it; absent for what the journal writes itself. */
function fieldAt(value: unknown, path: readonly PropertyKey[]): Field | undefined {
  const kind = valueAt(value, ['kind']);
  if (!ENTRY_KINDS.some((known) => known === kind)) return undefined;
  let fields = fieldsOf(kind as EntryKind);
  let at: unknown = value;
  let field: Field | undefined;
  for (const key of path) {
    at = valueAt(at, [key]);
    // Within a list the field is the list's own.
    if (typeof key === 'number') {
      fields = fieldsIn(field?.shape.type === 'list' ? field.shape.of : undefined, at);
      continue;
    }
    const inner = fields.find(({ name }) => name === key);
    if (!inner) return field && fields.length > 0 ? { ...field, optional: false } : undefined;
    field = inner;
    fields = fieldsIn(inner.shape, at);
  }
  return field;
}

function fieldsIn(shape: Shape | undefined, at: unknown): readonly Field[] {
  if (shape?.type === 'group') return shape.fields;
  if (shape?.type !== 'variants') return [];
  const chosen = valueAt(at, [shape.key]);
  return shape.variants.find(({ value }) => value === chosen)?.fields ?? [];
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[key] : undefined,
    value,
  );
}

function shortText(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = typeof value === 'number' ? String(value) : JSON.stringify(value);
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}
