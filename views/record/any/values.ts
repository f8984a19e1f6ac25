import type { PlainDay } from '../../../src/journal/day.ts';
import type { Draft, Entry, EntryKind } from '../../../src/journal/entry.ts';
import { type Field, fieldsOf, type Shape } from '../../../src/journal/fields.ts';
import type { ColonyId, KeeperId, QueenId } from '../../../src/journal/ids.ts';
import { newColonyId, newQueenId, newYardId } from '../../../src/journal/new-ids.ts';
import { headOn } from '../../../src/registry/queries.ts';
import type { Registry } from '../../../src/registry/state.ts';

/** The values of a form made from a schema, by the names of its fields. */
export type Values = Readonly<Record<string, unknown>>;

/** The field of each kind whose id this very entry makes; every other id points to something on record. */
const MAKES: Partial<Record<EntryKind, string>> = {
  'yard-opened': 'yard',
  'colony-started': 'colony',
  'queen-entered': 'queen',
  'queen-expected': 'queen',
  'queen-found': 'queen',
};

/** True when the entry itself makes what this id names: an expected queen always, others by their kind. */
export function isMade(kind: EntryKind, name: string): boolean {
  return name === 'expected' || MAKES[kind] === name;
}

export function newIdFor(shape: Shape): string | undefined {
  if (shape.type !== 'ref') return undefined;
  if (shape.to === 'queen') return newQueenId();
  if (shape.to === 'colony') return newColonyId();
  return shape.to === 'yard' ? newYardId() : undefined;
}

export interface About {
  readonly on: PlainDay;
  readonly registry: Registry;
  readonly keeper: KeeperId;
  readonly colony?: string | undefined;
  readonly queen?: string | undefined;
}

/** Values to begin with: the day shown, and the colony or queen that the keeper came from. */
export function firstValues(kind: EntryKind, about: About): Values {
  const colony = about.colony ? about.registry.colonies.get(about.colony as ColonyId) : undefined;
  const head = colony && (headOn(about.registry, colony, about.on)?.id ?? colony.expected[0]);
  const queen = (about.queen as QueenId | undefined) ?? head;
  const values: Record<string, unknown> = { day: about.on };
  let placed = false;
  for (const { name, shape, optional } of fieldsOf(kind)) {
    if (isMade(kind, name)) values[name] = newIdFor(shape);
    else if (isRef(shape, 'keeper')) values[name] = about.keeper;
    else if (isRef(shape, 'queen') && !optional && queen) values[name] = queen;
    else if (isRef(shape, 'colony') && !optional && !placed && colony) {
      values[name] = colony.id;
      placed = true;
    } else if (shape.type === 'list' && isRef(shape.of, 'colony') && colony) values[name] = [colony.id];
    else if (kind === 'note' && name === 'about') values[name] = noteAbout(about);
  }
  return values;
}

function isRef(shape: Shape, to: string): boolean {
  return shape.type === 'ref' && shape.to === to;
}

function noteAbout({ colony, queen }: About): unknown {
  if (queen) return { of: 'queen', queen };
  return colony ? { of: 'colony', colony } : undefined;
}

/** The values of an entry that stands, for its correction. */
export function valuesOf(entry: Entry): Values {
  return { ...entry };
}

/** The draft that the values make: what is empty is left out, and only fields of the kind are taken. */
export function draftOf(kind: EntryKind, values: Values): Draft {
  return { kind, ...picked(fieldsOf(kind), values) } as unknown as Draft;
}

function picked(fields: readonly Field[], values: Values): Values {
  const said = fields.flatMap(({ name, shape, optional }) => {
    const value = cleaned(shape, values[name], optional);
    return value === undefined ? [] : [[name, value] as const];
  });
  return Object.fromEntries(said);
}

function cleaned(shape: Shape, value: unknown, optional: boolean): unknown {
  if (value === undefined || value === '') return optional ? undefined : emptyOf(shape);
  if (shape.type === 'group') {
    const inner = picked(shape.fields, value as Values);
    return optional && Object.keys(inner).length === 0 ? undefined : inner;
  }
  if (shape.type === 'variants') {
    const chosen = (value as Values)[shape.key];
    const variant = shape.variants.find((each) => each.value === chosen);
    return variant ? { [shape.key]: chosen, ...picked(variant.fields, value as Values) } : undefined;
  }
  if (shape.type === 'list') {
    const items = (value as readonly unknown[]).map((item) => cleaned(shape.of, item, false));
    return optional && items.length === 0 ? undefined : items.filter((item) => item !== undefined);
  }
  return value;
}

/** What stands for a field that must be there and of which nothing was said. */
function emptyOf(shape: Shape): unknown {
  if (shape.type === 'list') return [];
  return shape.type === 'group' ? picked(shape.fields, {}) : undefined;
}
