import { describe, expect, it } from 'vitest';
import { colonyOfQueen, labelOn } from '../../../../src/registry/queries.ts';
import { findQueens } from '../../../../views/parts/find-queens.ts';
import { DEMO_DAY, demoQueen, demoRegistry } from '../../../helpers/demo.ts';

const registry = demoRegistry();
const find = (text: string) => findQueens(registry, text, DEMO_DAY);

describe('looking a queen up', () => {
  it('finds her by the beginning of her name, capitals and accents aside', () => {
    const queen = demoQueen('Norther');
    expect(find('nORTH').map((found) => found.queen.id)).toEqual([queen.id]);
    expect(find('Nórth').map((found) => found.queen.id)).toEqual([queen.id]);
  });

  it('finds her by the box she heads and by the number on her back', () => {
    const queen = demoQueen('Norther');
    const box = labelOn(colonyOfQueen(registry, queen, DEMO_DAY)!, DEMO_DAY);
    expect(find(box).map((found) => found.queen.id)).toContain(queen.id);
    expect(find(`${queen.mark?.number}`).map((found) => found.queen.id)).toContain(queen.id);
  });

  it('wants every word to fit', () => {
    expect(find('norther 1999')).toEqual([]);
    expect(find('no-such-queen')).toEqual([]);
  });

  it('shows all for nothing, those who lay first and those who are gone last', () => {
    const found = find('');
    expect(found).toHaveLength(registry.queens.size);
    const laying = found.map(({ queen }) => queen.state.is === 'laying');
    expect(laying.lastIndexOf(true)).toBeLessThan(laying.indexOf(false));
    expect(found.at(-1)?.queen.state.is).not.toBe('expected');
  });

  it('puts those who are called so before those whose box or year begins so', () => {
    const found = find('s').map(({ title }) => title);
    const called = found.filter((title) => title.toLowerCase().startsWith('s'));
    expect(found.slice(0, called.length)).toEqual(called);
    expect(found.length).toBeGreaterThan(called.length);
  });
});
