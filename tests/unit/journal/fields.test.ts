import { describe, expect, it } from 'vitest';
import { Entry } from '../../../src/journal/entry.ts';
import { ENTRY_KINDS, type Field, fieldsOf, type Shape } from '../../../src/journal/fields.ts';

function named(fields: readonly Field[], name: string): Field {
  const field = fields.find((each) => each.name === name);
  if (!field) throw new Error(`no field ${name}`);
  return field;
}

describe('the fields of an entry, as forms read them', () => {
  it('are there for every kind of the union', () => {
    expect(ENTRY_KINDS).toHaveLength(Entry.options.length);
    for (const kind of ENTRY_KINDS) expect(fieldsOf(kind).map(({ name }) => name)).toContain('day');
  });

  it('leave out what the journal writes itself', () => {
    const names = ENTRY_KINDS.flatMap((kind) => fieldsOf(kind).map(({ name }) => name));
    for (const own of ['id', 'action', 'recordedAt', 'recordedBy', 'supersedes', 'overruled', 'kind'])
      expect(names).not.toContain(own);
  });

  it('begin with the day and end with the remark', () => {
    const names = fieldsOf('harvest').map(({ name }) => name);
    expect(names[0]).toBe('day');
    expect(names.at(-1)).toBe('remark');
  });

  it('carry the words of the schema, and readable words where it has none', () => {
    expect(named(fieldsOf('harvest'), 'kilograms').label).toBe('Honey (kg)');
    expect(named(fieldsOf('harvest'), 'colony').label).toBe('Colony');
  });

  it('know what an id points to, also under words of its own', () => {
    expect(named(fieldsOf('colony-moved'), 'yard')).toMatchObject({
      label: 'To yard',
      shape: { type: 'ref', to: 'yard' },
    });
    expect(named(fieldsOf('treatment-ended'), 'treatment').shape).toEqual({ type: 'ref', to: 'entry' });
  });

  it('carry the limits of the schema', () => {
    expect(named(fieldsOf('inspection'), 'gentle').shape).toEqual({
      type: 'number',
      min: 1,
      max: 4,
      step: 0.5,
    });
    const { shape } = named(fieldsOf('treatment'), 'colonies');
    expect(shape).toEqual({ type: 'list', of: { type: 'ref', to: 'colony' }, atLeast: 1 });
  });

  it('tell optional fields from those that must be said', () => {
    expect(named(fieldsOf('feeding'), 'kilograms').optional).toBe(true);
    expect(named(fieldsOf('feeding'), 'feed').optional).toBe(false);
  });

  it('open each way of a union with fields of its own', () => {
    const { shape } = named(fieldsOf('mating'), 'way');
    const ways = (shape as Extract<Shape, { type: 'variants' }>).variants;
    expect(ways.map(({ value }) => value)).toEqual(['open', 'insemination', 'station']);
    expect(ways[0]?.fields.map(({ name }) => name)).toEqual(['yard']);
  });
});
