import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { inVainText, shownHead, waitingText } from '../../../../views/parts/awaited.ts';
import { headWords } from '../../../../views/parts/HeadLine.tsx';
import { day, rough, Story } from '../../../helpers/story.ts';

/** A colony split in three on 10 May; in Three cells may have been looked for six days later, and none found. */
function split(looked: boolean) {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  const none = { openCells: 0, cappedCells: 0, emergedCells: 0 };
  if (looked)
    story.write({ kind: 'inspection', day: rough('2026-05-16'), colony: story.colony('Three'), ...none });
  const registry = project(story.journal());
  const three = registry.colonies.get(story.colony('Three'));
  if (!three) throw new Error('No part Three.');
  return [registry, three, day('2026-05-17')] as const;
}

describe('what a colony without a head is said to wait for', () => {
  it('is the queen expected while nothing speaks against her', () => {
    const [registry, three, on] = split(false);
    expect(waitingText(registry, three, on)).toBe('No queen lays here yet; 1 queen is expected.');
    expect(inVainText(registry, three, on)).toBeUndefined();
    expect(shownHead(registry, three, on)).toBe('expected');
  });

  it('is nobody where the part failed: one queen to come and none are not said side by side', () => {
    const [registry, three, on] = split(true);
    expect(inVainText(registry, three, on)).toBe('Likely: no queen, and none on the way.');
    expect(waitingText(registry, three, on)).toBe('No queen is known to lay here.');
    expect(headWords({ registry, colony: three, on })).toBe('likely: no queen, and none on the way');
    expect(shownHead(registry, three, on)).toBe('nobody-known');
  });
});
