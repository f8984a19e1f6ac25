import { describe, expect, it } from 'vitest';
import { forecastPart } from '../../../../graph/increase/forecast.ts';
import { contentOfPart, type SplitPart, settledBees } from '../../../../graph/increase/parts.ts';
import { weakParts } from '../../../../graph/increase/weakness.ts';
import { comb, STRONG, WEAK } from '../../../helpers/combs.ts';

const halves = (stand: SplitPart['stand'], other: SplitPart['stand']): readonly SplitPart[] => [
  { frames: STRONG.slice(0, 8), stand, queen: 'old-queen', layingFrom: 0 },
  { frames: STRONG.slice(8), stand: other, queen: 'raises', layingFrom: 25 },
];
const all = (parts: readonly SplitPart[]): readonly number[] =>
  parts.map((_, index) => {
    const { house, foragers } = settledBees(parts, index, 'likely');
    return house + foragers;
  });
const put = (parts: readonly SplitPart[]): readonly number[] =>
  parts.map((part) => contentOfPart(part, 'likely').bees);

describe('bees after the flying ones have gone home', () => {
  it('are as many as before, shifted to the old stand', () => {
    const parts = halves('old-stand', 'moved');
    const [stays, moved] = all(parts) as [number, number];
    const [before, after] = put(parts) as [number, number];
    expect(stays + moved).toBeCloseTo(before + after, 6);
    expect(moved).toBeCloseTo(after * (1 - 0.33), 6);
  });

  it('stay where they are in a part taken out of flying range', () => {
    const parts = halves('old-stand', 'away');
    expect(all(parts)[1]).toBeCloseTo(put(parts)[1]!, 6);
  });

  it('come home in equal numbers to two parts beside the empty stand', () => {
    const parts = halves('beside', 'beside');
    const foragers = [0, 1].map((index) => settledBees(parts, index, 'likely').foragers);
    expect(foragers[0]).toBeCloseTo(foragers[1]!, 9);
  });

  it('go with the frames whose bees are shaken over', () => {
    const [stays, moved] = halves('old-stand', 'moved') as [SplitPart, SplitPart];
    const frame = STRONG[2]!;
    const shaken = [
      { ...stays, shakenOff: [frame] },
      { ...moved, shakenFrom: [frame] },
    ];
    const before = put([stays, moved]);
    const after = put(shaken);
    expect(after[0]! + after[1]!).toBeCloseTo(before[0]! + before[1]!, 6);
    expect(after[1]! - before[1]!).toBeCloseTo(2 * 8.8 * 130, 6);
  });

  it('leave a moved part with fewest bees where most of them fly, and the old stand the other way', () => {
    const parts = halves('old-stand', 'moved');
    const share = (index: number, one: 'low' | 'high') => {
      const { house } = settledBees(parts, index, one);
      return house / contentOfPart(parts[index]!, one).bees;
    };
    expect(share(1, 'low')).toBeLessThan(share(1, 'high'));
    expect(share(0, 'low')).toBeGreaterThan(share(0, 'high'));
  });
});

describe('the forecast of a part', () => {
  it('gives three weeks and six with the likely figure within its range', () => {
    const { weeks } = forecastPart(halves('old-stand', 'moved'), 1);
    expect(weeks.map(({ week }) => week)).toEqual([0, 3, 6]);
    for (const { bees } of weeks) {
      expect(bees.low).toBeLessThanOrEqual(bees.likely);
      expect(bees.likely).toBeLessThanOrEqual(bees.high);
    }
  });

  it('names the assumptions that it rests on', () => {
    expect(forecastPart(halves('old-stand', 'moved'), 0).assumptions).toContain('foragerShare');
  });

  it("follows the keeper's own value in place of the table's", () => {
    const own = { foragerLoss: { low: 0.05, likely: 0.05, high: 0.05 } };
    const parts = halves('old-stand', 'moved');
    const bees = (forecast: ReturnType<typeof forecastPart>) => forecast.weeks[1]!.bees.likely;
    expect(bees(forecastPart(parts, 0, { own }))).toBeGreaterThan(bees(forecastPart(parts, 0)));
  });

  it('ends lower where no queen will lay than where one does', () => {
    const parts = halves('old-stand', 'moved');
    const { layingFrom: _, ...hopeless } = parts[1]!;
    const week6 = (list: readonly SplitPart[]) => forecastPart(list, 1).weeks[2]!.bees.likely;
    expect(week6([parts[0]!, hopeless])).toBeLessThan(week6([parts[0]!, { ...parts[1]!, layingFrom: 0 }]));
  });
});

describe('weak parts', () => {
  const codes = (parts: readonly SplitPart[]) => weakParts(parts).map(({ part, code }) => `${part} ${code}`);

  it('are none in two halves of a strong colony', () => {
    expect(codes(halves('old-stand', 'moved'))).toEqual([]);
  });

  it('have too few bees where a weak colony is cut in two', () => {
    const parts: readonly SplitPart[] = [
      { frames: WEAK.slice(0, 2), stand: 'old-stand', queen: 'old-queen', layingFrom: 0 },
      { frames: WEAK.slice(2), stand: 'moved', queen: 'raises', layingFrom: 25 },
    ];
    expect(codes(parts)).toContain('1 too-few-bees');
    const [weak] = weakParts(parts).filter(({ part, code }) => part === 1 && code === 'too-few-bees');
    expect(weak!.found!.likely).toBeLessThan(weak!.asked!);
  });

  it('have nothing to raise a queen from without eggs, larvae or cells, and cells are enough', () => {
    const part = (marks: { cells?: boolean }): readonly SplitPart[] => [
      { frames: STRONG.slice(0, 8), stand: 'old-stand', queen: 'old-queen', layingFrom: 0 },
      {
        frames: [...STRONG.slice(10, 12), comb('x', [1, 0, 0.9, 0], marks), comb('y', [1, 0, 0.5, 0.5])],
        stand: 'away',
        queen: 'raises',
      },
    ];
    expect(codes(part({}))).toContain('1 nothing-to-raise-from');
    expect(codes(part({ cells: true }))).not.toContain('1 nothing-to-raise-from');
  });

  it('miss the queen where her frame is in another part', () => {
    const [queen, raises] = halves('old-stand', 'moved') as [SplitPart, SplitPart];
    expect(
      codes([
        { ...queen, queen: 'raises' },
        { ...raises, queen: 'old-queen' },
      ]),
    ).toContain('1 no-queen-found');
  });

  it('cannot cover brood with too few bees, and starve without stores', () => {
    const bare = [comb('a', [0.4, 0.4, 0.5, 0], { eggs: true }), comb('b', [0.4, 0.4, 0.5, 0.02])];
    const parts: readonly SplitPart[] = [
      { frames: STRONG, stand: 'old-stand', queen: 'old-queen', layingFrom: 0 },
      { frames: bare, stand: 'away', queen: 'raises', layingFrom: 25 },
    ];
    expect(codes(parts)).toEqual(expect.arrayContaining(['1 too-few-bees-for-brood', '1 too-little-stores']));
  });
});
