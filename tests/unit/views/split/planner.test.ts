import { describe, expect, it } from 'vitest';
import { FRAME_SIZES } from '../../../../graph/increase/comb.ts';
import { project } from '../../../../src/registry/project.ts';
import { missingInPlan, splitDrafts } from '../../../../views/split/drafts.ts';
import { queenOf, SOURCE } from '../../../../views/split/plan.ts';
import { judged, moveOn, partsOf, propose } from '../../../../views/split/planner/deal.ts';
import { areaOf, figureOf } from '../../../../views/split/planner/measures.ts';
import {
  combFrames,
  corrected,
  correctFrame,
  emptyFrame,
  firstSketch,
  frameSizes,
  fromTheMiddle,
  hasContent,
  quarter,
  resizeBox,
  type Sketch,
  sketchBasis,
} from '../../../../views/split/planner/sketch.ts';
import { frameKinds, toBench } from '../../../../views/split/planner/to-bench.ts';
import { basisWords, frameWords } from '../../../../views/split/planner/words.ts';
import { day, rough, Story, testId } from '../../../helpers/story.ts';

const ON = day('2026-05-10');

/** One strong colony, looked at three days before. */
function bench(seen: {
  framesOfBees?: number;
  framesOfBrood?: number;
  framesOfStores?: number;
  eggs?: boolean;
}) {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { '1': 'Alder' });
  story.write({ kind: 'inspection', day: rough('2026-05-07'), colony: story.colony('1'), ...seen });
  const registry = project(story.journal());
  const source = registry.colonies.get(story.colony('1'));
  if (!source) throw new Error('The story has a colony 1.');
  let next = 0x7000;
  const newId = () => testId(next++);
  const basis = sketchBasis(source, ON);
  const sketch = firstSketch(basis, 'Langstroth deep', newId);
  return { story, registry, source, newId, basis, sketch };
}

const STRONG = { framesOfBees: 10, framesOfBrood: 6, framesOfStores: 3, eggs: true };
const frames = ({ boxes }: Sketch) => boxes.flatMap((box) => box.frames);

describe('the sketch of a colony', () => {
  it('holds as many frames of bees and of brood as were last seen, brood in the middle, stores outside', () => {
    const { sketch } = bench(STRONG);
    const all = frames(sketch);
    expect(all.filter(({ bees }) => bees === 1)).toHaveLength(10);
    expect(all.map(({ brood }) => (brood > 0 ? 'b' : all.length > 0 ? '-' : ''))).toEqual([...'--bbbbbb--']);
    expect(all.map(({ stores }) => stores)).toEqual([1, 0, 0, 0, 0, 0, 0, 0, 1, 1]);
  });

  it('is said to be one, with its days and with what nobody saw', () => {
    const { basis } = bench({ framesOfBees: 10, framesOfBrood: 6 });
    expect(basisWords(basis, ON)).toBe(
      'A sketch from what was last seen: 10 frames of bees (7 May) and 6 of brood (7 May). ' +
        'Not known: stores, eggs and where the queen is. Tap a frame to correct it.',
    );
  });

  it('takes no eggs and no queen for granted', () => {
    expect(
      frames(bench({ framesOfBees: 8, framesOfBrood: 4 }).sketch).some(({ eggs, queen }) => eggs || queen),
    ).toBe(false);
    expect(frames(bench(STRONG).sketch).some(({ queen }) => queen)).toBe(false);
  });

  it('is empty where nothing was ever seen, and gives no plan', () => {
    const { sketch, basis } = bench({ eggs: true });
    expect(hasContent(sketch)).toBe(false);
    expect(basisWords(basis, ON)).toContain('Nothing is known of its strength yet');
  });

  it('lets brood and stores share the comb, and the queen be on one frame only', () => {
    const full = corrected({ ...emptyFrame('a'), stores: 0.75 }, { brood: 0.5 });
    expect([full.brood, full.stores]).toEqual([0.5, 0.5]);
    const { sketch } = bench(STRONG);
    const [first, second] = frames(sketch);
    if (!first || !second) throw new Error('The sketch has frames.');
    const moved = correctFrame(correctFrame(sketch, first.id, { queen: true }), second.id, { queen: true });
    expect(
      frames(moved)
        .filter(({ queen }) => queen)
        .map(({ id }) => id),
    ).toEqual([second.id]);
  });

  it('grows by empty frames and shrinks from the end', () => {
    const { sketch, newId } = bench(STRONG);
    const [box] = sketch.boxes;
    if (!box) throw new Error('The sketch has a box.');
    expect(
      resizeBox(box, 12, newId)
        .frames.slice(10)
        .every(({ bees }) => bees === 0),
    ).toBe(true);
    expect(resizeBox(box, 4, newId).frames).toEqual(box.frames.slice(0, 4));
  });

  it('puts every place once, from the middle outward', () => {
    for (const count of [1, 2, 5, 10, 11]) {
      expect([...fromTheMiddle(count)].sort((a, b) => a - b)).toEqual([...Array(count).keys()]);
    }
    expect(fromTheMiddle(5)).toEqual([2, 3, 1, 4, 0]);
  });

  it('rounds to quarters between none and full', () => {
    expect([-1, 0.1, 0.13, 0.5, 2].map(quarter)).toEqual([0, 0, 0.25, 0.5, 1]);
  });
});

describe('the frames as the planner reckons', () => {
  it('split brood of both ages by the days of egg and larva, nine of twenty-one', () => {
    const { sketch } = bench(STRONG);
    const comb = combFrames(sketch, FRAME_SIZES)[4];
    expect((comb?.openBrood ?? 0) / ((comb?.openBrood ?? 0) + (comb?.cappedBrood ?? 0))).toBeCloseTo(
      9 / 21,
      12,
    );
  });

  it('take each box at its own frame size, so depths may be mixed', () => {
    const { sketch, newId } = bench(STRONG);
    const [box] = sketch.boxes;
    if (!box) throw new Error('The sketch has a box.');
    const mixed = { ...sketch, boxes: [box, resizeBox({ key: 'b', size: 'Mine', frames: [] }, 2, newId)] };
    const sizes = frameSizes([{ id: 'm', name: 'Mine', sideDm2: 6.2, fullBees: 1700 }]);
    expect(new Set(combFrames(mixed, sizes).map(({ size }) => size.name))).toEqual(
      new Set(['Langstroth deep', 'Mine']),
    );
    expect(sizes[0]).toMatchObject({ name: 'Mine', fullBees: 1700 });
  });

  it('say the frame to a screen reader', () => {
    const frame = { ...emptyFrame('a'), bees: 1 as const, brood: 0.75 as const, eggs: true };
    expect(frameWords(frame, 4)).toBe('Frame 4: bees full; brood three quarters, open and capped; eggs');
    expect(frameWords(emptyFrame('a'), 1)).toBe('Frame 1: empty');
  });
});

describe('a proposed partition', () => {
  const wish = { parts: 3, queenStays: false, takenAway: false } as const;
  const dealt = (seen = STRONG) => {
    const made = bench(seen);
    const comb = combFrames(made.sketch, FRAME_SIZES);
    return { ...made, comb, deal: propose(comb, wish) };
  };

  it('gives every frame to exactly one part, and every part that raises a queen a frame with eggs', () => {
    const { deal, comb } = dealt();
    const parts = partsOf(deal, comb);
    expect(parts.flatMap((part) => part.frames.map(({ id }) => id)).sort()).toEqual(
      comb.map(({ id }) => id).sort(),
    );
    for (const part of parts) {
      if (part.queen === 'raises') expect(part.frames.some(({ eggs }) => eggs)).toBe(true);
    }
  });

  it('changes its figures when a frame is moved on, with the bees on it', () => {
    const { deal, comb } = dealt();
    const at = deal.comb.indexOf(1);
    const moved = moveOn(deal, at);
    expect(moved.comb[at]).toBe(2);
    expect(moved.bees[at]).toBe(2);
    const [before, after] = [judged(deal, comb), judged(moved, comb)];
    expect(after[2]?.forecast.weeks[0]?.bees.likely).toBeGreaterThan(
      before[2]?.forecast.weeks[0]?.bees.likely ?? 0,
    );
  });

  it('does not call it a weakness that nobody knows yet on which frame the queen is', () => {
    const { deal, comb } = dealt();
    expect(judged(deal, comb).flatMap(({ weak }) => weak.map(({ code }) => code))).not.toContain(
      'no-queen-found',
    );
  });

  it('calls no part short of food where nobody looked at the stores', () => {
    const { deal, comb } = dealt({ framesOfBees: 8, framesOfBrood: 5, framesOfStores: 0, eggs: true });
    const codes = (known: boolean) =>
      judged(deal, comb, known).flatMap(({ weak }) => weak.map(({ code }) => code));
    expect(codes(true)).toContain('too-little-stores');
    expect(codes(false)).not.toContain('too-little-stores');
  });

  it('calls parts of a small colony weak, with the reason', () => {
    const small = dealt({ framesOfBees: 4, framesOfBrood: 3, framesOfStores: 1, eggs: true });
    const weak = judged(small.deal, small.comb).flatMap((part) => part.weak);
    expect(weak.length).toBeGreaterThan(0);
    expect(weak.some(({ code }) => code === 'too-few-bees')).toBe(true);
  });

  it('lies on the bench with its parts, frames and the old queen, ready to be written down', () => {
    const { deal, comb, registry, source, newId } = dealt();
    const plan = toBench(partsOf(deal, comb), { registry, source, day: ON, newId });
    expect(plan.parts).toHaveLength(3);
    expect(plan.parts.map((part) => queenOf(plan, part).how)).toEqual([
      'raises-own',
      'old-queen',
      'raises-own',
    ]);
    expect(plan.parts.find(({ key }) => key === SOURCE)?.frames.eggs).toBeUndefined();
    const counted = plan.parts.flatMap(({ frames: of, key }) =>
      key === SOURCE ? [] : Object.entries(of).flatMap(([kind, n]) => (kind === 'shakenBees' ? [] : [n])),
    );
    const off = deal.comb.filter((part) => part !== 0).length;
    expect(counted.reduce((sum: number, n) => sum + (n ?? 0), 0)).toBe(off);
    expect(missingInPlan(plan, registry)).toEqual([]);
    expect(splitDrafts(plan, registry)).toHaveLength(3);
  });

  it('counts the frame a queen is raised from as eggs, and every other by what most of it is', () => {
    const size = FRAME_SIZES[0];
    if (!size) throw new Error('There are sizes.');
    const comb = { size, bees: 1, openBrood: 0, cappedBrood: 0, stores: 0 };
    const part = (queen: 'raises' | 'old-queen') => ({
      stand: 'moved' as const,
      queen,
      frames: [
        { ...comb, id: 'a', openBrood: 0.3, cappedBrood: 0.2, eggs: true },
        { ...comb, id: 'b', openBrood: 0.5, cappedBrood: 0.1, eggs: true },
        { ...comb, id: 'c', openBrood: 0.1, cappedBrood: 0.6 },
        { ...comb, id: 'd', stores: 0.75 },
        { ...comb, id: 'e', stores: 0.25 },
      ],
    });
    expect(frameKinds(part('raises'))).toEqual({
      eggs: 1,
      openBrood: 1,
      emergingBrood: 1,
      stores: 1,
      drawnComb: 1,
    });
    expect(frameKinds(part('old-queen'))).toEqual({
      openBrood: 2,
      emergingBrood: 1,
      stores: 1,
      drawnComb: 1,
    });
  });
});

describe('measures', () => {
  it('read a comma as a point, and nothing where there is no figure', () => {
    expect(figureOf('20,3')).toBe(20.3);
    expect([figureOf(''), figureOf('x'), figureOf('0')]).toEqual([undefined, undefined, undefined]);
    expect(areaOf('42,8', '20.5')).toBeCloseTo(8.774, 12);
    expect(areaOf('42', '')).toBeUndefined();
  });
});
