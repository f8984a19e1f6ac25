import { describe, expect, it } from 'vitest';
import {
  COLUMNS,
  closeRow,
  linkRow,
  newKnownRows,
  sweepBlock,
} from '../../../../graph/kinship/column-kernel.ts';
import { compactRows } from '../../../../graph/kinship/compact-rows.ts';
import { listLengths, listOfItems, numberLists } from '../../../../graph/kinship/number-lists.ts';
import { shareRowsBuilder } from '../../../../graph/kinship/share-rows.ts';
import { multiplyA } from '../../../../graph/kinship/sweeps.ts';
import { randomGenerator } from '../../../../graph/numerics/random.ts';
import { compiled } from '../../../helpers/compiled.ts';
import { randomPedigree } from '../../../helpers/random-pedigrees.ts';

describe('rows of shares', () => {
  it('grow, and keep their pairs', () => {
    const builder = shareRowsBuilder(0, 0);
    for (let row = 0; row < 100; row++) {
      for (let k = 0; k < row; k++) builder.add(k, 1 / row);
      expect(builder.close()).toBe(row);
    }
    const { rows, start, item, share } = builder.finish();
    expect(rows).toBe(100);
    expect([...item.slice(start[7]!, start[8]!)]).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect([...share.slice(start[7]!, start[8]!)]).toEqual(new Array(7).fill(1 / 7));
  });

  it('are shared where equal in value, order and tag, and only there', () => {
    const builder = shareRowsBuilder(4, 4);
    const row = (tag: number, ...pairs: readonly (readonly [number, number])[]) => {
      for (const [item, share] of pairs) builder.add(item, share);
      return builder.closeShared(tag);
    };
    expect(row(1, [3, 0.5], [4, 0.5])).toBe(0);
    expect(row(1, [3, 0.5], [4, 0.5])).toBe(0);
    expect(row(1, [4, 0.5], [3, 0.5])).toBe(1);
    expect(row(1, [3, 0.5 + 2 ** -40], [4, 0.5])).toBe(2);
    expect(row(1, [3, 0.5])).toBe(3);
    expect(builder.finish().start).toEqual(Int32Array.of(0, 2, 4, 6, 7));
  });

  it('of another tag are another row, though their pairs are the same', () => {
    const builder = shareRowsBuilder(4, 4);
    builder.add(3, 1);
    expect(builder.closeShared(1)).toBe(0);
    builder.add(3, 1);
    expect(builder.closeShared(2)).toBe(1);
  });
});

describe('lists of numbers', () => {
  it('keep the order of the pairs, and leave out what belongs to none', () => {
    const lists = numberLists(3, [2, 0, -1, 2, 0]);
    expect([...lists.start]).toEqual([0, 2, 2, 4]);
    expect([...lists.item]).toEqual([1, 4, 0, 3]);
    expect([...listLengths(lists)]).toEqual([2, 0, 2]);
    expect([...listOfItems(lists)]).toEqual([0, 0, 2, 2]);
    expect([...numberLists(1, [0, 0], [7, 5]).item]).toEqual([7, 5]);
  });
});

describe('compact rows', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('give the columns of A at their targets, pedigree %i', (seed) => {
    const pedigree = compiled(randomPedigree(seed * 31, 30));
    const random = randomGenerator(seed);
    const { size: count, parentStart: start, parent, coefficient, mendelian } = pedigree;
    const targets = Array.from({ length: 6 }, () => random.integer(count));
    const { rows, placeOf } = compactRows({ count, start, parent, coefficient, mendelian }, targets);
    expect(rows.count).toBeLessThanOrEqual(count);
    const block = new Float64Array(rows.count * COLUMNS);
    targets.forEach((target, b) => {
      block[placeOf[target]! * COLUMNS + b] = 1;
    });
    sweepBlock(rows, block, rows.count);
    targets.forEach((target, b) => {
      const unit = new Float64Array(count);
      unit[target] = 1;
      const column = multiplyA(pedigree, unit);
      for (const other of targets)
        expect(block[placeOf[other]! * COLUMNS + b]).toBeCloseTo(column[other]!, 12);
    });
  });

  it('fold a chain into its end', () => {
    const known = newKnownRows(0, 0);
    const root = closeRow(known, 1);
    let last = root;
    for (let k = 0; k < 5; k++) {
      linkRow(known, last, 0.5);
      last = closeRow(known, 0.75);
    }
    const { rows } = compactRows(known, [last]);
    expect(rows.count).toBe(1);
    /** 0.75 (1 + 1/4 + ... + 1/4^4) + 1/4^5 = 1: each link of the chain has A = 1. */
    expect(rows.mendelian[0]).toBeCloseTo(1, 14);
  });
});
