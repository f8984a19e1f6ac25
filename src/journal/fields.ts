import type * as z from 'zod';
import { PlainDay, RoughDay } from './day.ts';
import { Entry, type EntryKind } from './entry.ts';
import { entryBase } from './entry-parts.ts';
import { ActionId, ColonyId, EntryId, KeeperId, PhotoId, QueenId, YardId } from './ids.ts';

/**
 * The schemas as forms read them: every field of every kind of entry with its words, its limits and what it points
 * to. Nothing here knows a kind by name, so an entry kind added to the union has a form at once.
 */

/** What an id points to. */
export type RefTo = 'colony' | 'queen' | 'yard' | 'entry' | 'keeper' | 'photo' | 'action';

export type Shape =
  | { readonly type: 'text' }
  | { readonly type: 'number'; readonly min?: number; readonly max?: number; readonly step?: number }
  | { readonly type: 'yes-no' }
  | { readonly type: 'choice'; readonly options: readonly string[] }
  | { readonly type: 'fixed'; readonly value: string }
  | { readonly type: 'day' }
  | { readonly type: 'rough-day' }
  | { readonly type: 'ref'; readonly to: RefTo }
  | { readonly type: 'list'; readonly of: Shape; readonly atLeast: number }
  | { readonly type: 'group'; readonly fields: readonly Field[] }
  | { readonly type: 'variants'; readonly key: string; readonly variants: readonly Variant[] };

export interface Field {
  readonly name: string;
  readonly label: string;
  readonly optional: boolean;
  readonly shape: Shape;
}

export interface Variant {
  readonly value: string;
  readonly fields: readonly Field[];
}

/** The fields of a kind of entry that a keeper fills in: all but those the journal writes itself. */
export function fieldsOf(kind: EntryKind): readonly Field[] {
  const option = Entry.options.find((each) => each.shape.kind.value === kind);
  if (!option) throw new Error(`No schema for the entry kind ${kind}.`);
  const { day, remark, ...own } = Object.fromEntries(
    groupFields(option.shape).map((each) => [each.name, each]),
  );
  const said = Object.values(own).filter(({ name }) => !(name in entryBase));
  return [day, ...said, remark].filter((each) => each !== undefined);
}

export const ENTRY_KINDS: readonly EntryKind[] = Entry.options.map((option) => option.shape.kind.value);

type Schema = z.core.$ZodType;

const REFS: readonly (readonly [Schema, RefTo])[] = [
  [ColonyId, 'colony'],
  [QueenId, 'queen'],
  [YardId, 'yard'],
  [EntryId, 'entry'],
  [KeeperId, 'keeper'],
  [PhotoId, 'photo'],
  [ActionId, 'action'],
];

function groupFields(shape: Readonly<Record<string, Schema>>): readonly Field[] {
  return Object.entries(shape)
    .filter(([name]) => name !== 'kind')
    .map(([name, schema]) => field(name, schema));
}

function field(name: string, schema: Schema): Field {
  const inner = unwrapped(schema);
  const label = describing(schema) ?? describing(inner) ?? words(name);
  return { name, label, optional: inner !== schema, shape: shapeOf(inner) };
}

function unwrapped(schema: Schema): Schema {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  return def.type === 'optional' ? unwrapped(def.innerType) : schema;
}

function describing(schema: Schema): string | undefined {
  return (schema as z.ZodType).description;
}

/** "broodPattern" as "Brood pattern". */
function words(name: string): string {
  const text = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function shapeOf(schema: Schema): Shape {
  const ref = REFS.find(([id]) => isA(schema, id));
  if (ref) return { type: 'ref', to: ref[1] };
  if (isA(schema, RoughDay)) return { type: 'rough-day' };
  if (isA(schema, PlainDay)) return { type: 'day' };
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'string':
      return { type: 'text' };
    case 'number':
      return numberShape(schema);
    case 'boolean':
      return { type: 'yes-no' };
    case 'enum':
      return { type: 'choice', options: Object.values(def.entries).map(String) };
    case 'literal':
      return { type: 'fixed', value: String(def.values[0]) };
    case 'array':
      return {
        type: 'list',
        of: shapeOf(def.element),
        atLeast: checksOf(schema).get('min_length')?.minimum ?? 0,
      };
    case 'object':
      return { type: 'group', fields: groupFields(def.shape) };
    case 'union':
      return variantsShape(schema as z.core.$ZodDiscriminatedUnion);
    default:
      throw new Error(`The form knows no field of the schema type ${def.type}.`);
  }
}

/** A schema described anew is a copy that remembers what it was copied from. */
function isA(schema: Schema, original: Schema): boolean {
  for (let at: Schema | undefined = schema; at; at = at._zod.parent) if (at === original) return true;
  return false;
}

interface Check {
  readonly check: string;
  readonly value?: number;
  readonly minimum?: number;
}

/** The checks that a schema makes, each with its bound. */
function checksOf(schema: Schema): ReadonlyMap<string, Check> {
  const { checks } = (schema as z.core.$ZodTypes)._zod.def as { checks?: readonly z.core.$ZodCheck[] };
  const defs = (checks ?? []).map((each) => each._zod.def as Check);
  return new Map(defs.map((def) => [def.check, def]));
}

function numberShape(schema: Schema): Shape {
  const checks = checksOf(schema);
  const min = checks.get('greater_than')?.value;
  const max = checks.get('less_than')?.value;
  const step = checks.get('multiple_of')?.value ?? (checks.has('number_format') ? 1 : undefined);
  return {
    type: 'number',
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
    ...(step === undefined ? {} : { step }),
  };
}

function variantsShape(schema: z.core.$ZodDiscriminatedUnion): Shape {
  const { discriminator: key, options } = schema._zod.def;
  const variants = options.map((option) => {
    const { shape } = (option as z.core.$ZodObject)._zod.def;
    const named = shape[key];
    const fixed = named ? shapeOf(named) : undefined;
    const fields = Object.entries(shape)
      .filter(([name]) => name !== key)
      .map(([name, inner]) => field(name, inner));
    return { value: fixed?.type === 'fixed' ? fixed.value : '', fields };
  });
  return { type: 'variants', key, variants };
}
