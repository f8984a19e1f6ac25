import type { Field, Shape } from '../../../src/journal/fields.ts';
import type { Values } from './values.ts';

/** True when a field that must be said is empty itself; what is missing inside it is found there. */
export function isMissing({ optional, shape }: Field, value: unknown): boolean {
  if (optional || shape.type === 'group' || shape.type === 'fixed') return false;
  if (shape.type === 'list') return ((value as readonly unknown[] | undefined)?.length ?? 0) < shape.atLeast;
  if (shape.type === 'variants') return (value as Values | undefined)?.[shape.key] === undefined;
  return value === undefined || value === '';
}

/** True when anything that must be said is missing, at any depth. An optional group left alone misses nothing. */
export function anyMissing(fields: readonly Field[], values: Values): boolean {
  return fields.some((field) => {
    const value = values[field.name];
    if (isMissing(field, value)) return true;
    if (value === undefined)
      return field.shape.type === 'group' && !field.optional && anyMissing(field.shape.fields, {});
    return missesInside(field.shape, value, field.optional);
  });
}

function missesInside(shape: Shape, value: unknown, optional: boolean): boolean {
  if (shape.type === 'group')
    return !(optional && isEmpty(value)) && anyMissing(shape.fields, value as Values);
  if (shape.type === 'list') return (value as readonly unknown[]).some((item) => missesItem(shape.of, item));
  if (shape.type !== 'variants') return false;
  const values = value as Values;
  const chosen = shape.variants.find((variant) => variant.value === values[shape.key]);
  return chosen !== undefined && anyMissing(chosen.fields, values);
}

function missesItem(shape: Shape, item: unknown): boolean {
  return item === undefined || item === '' || missesInside(shape, item, false);
}

function isEmpty(value: unknown): boolean {
  return Object.values(value as Values).every((each) => each === undefined || each === '');
}

/** The words for the field at a path such as `way.droneMothers.0.share`. */
export function labelAt(fields: readonly Field[], path: string): string {
  const [name, ...rest] = path.split('.');
  const field = fields.find((each) => each.name === name);
  if (!field) return path;
  const inner = rest.filter((step) => !/^\d+$/.test(step));
  const below = fieldsInside(field.shape);
  return inner.length === 0 || below.length === 0
    ? field.label
    : `${field.label}, ${labelAt(below, inner.join('.'))}`;
}

function fieldsInside(shape: Shape): readonly Field[] {
  if (shape.type === 'group') return shape.fields;
  if (shape.type === 'list') return fieldsInside(shape.of);
  return shape.type === 'variants' ? shape.variants.flatMap(({ fields }) => fields) : [];
}
