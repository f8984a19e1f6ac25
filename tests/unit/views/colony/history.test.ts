import { describe, expect, it } from 'vitest';
import { project } from '../../../../src/registry/project.ts';
import { historyOf } from '../../../../views/colony/history.ts';
import { waitingOf } from '../../../../views/colony/waiting.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

function oneColony() {
  const story = new Story();
  const yard = story.yard('Home');
  const colony = story.colony('1');
  story.write({ kind: 'yard-opened', day: rough('2025-04-01'), yard, name: 'Home' });
  story.write({
    kind: 'colony-started',
    day: rough('2025-04-01'),
    colony,
    yard,
    label: '1',
    how: 'already-here',
  });
  const history = () => {
    const registry = project(story.journal());
    return historyOf(story.journal(), registry, registry.colonies.get(colony)!, day('2026-06-11'));
  };
  return { story, colony, yard, history };
}

describe('the history of a colony', () => {
  it('shows the last thing first', () => {
    const { story, colony, history } = oneColony();
    story.write({ kind: 'harvest', day: rough('2025-07-01'), colony, kilograms: 9 });
    expect(history().map(({ entry }) => entry.kind)).toEqual(['harvest', 'colony-started']);
  });

  it('keeps what was said before a correction', () => {
    const { story, colony, history } = oneColony();
    const [wrong] = story.write({ kind: 'harvest', day: rough('2025-07-01'), colony, kilograms: 90 });
    story.write({ kind: 'harvest', day: rough('2025-07-01'), colony, kilograms: 9, supersedes: wrong!.id });
    const harvests = history().filter(({ entry }) => entry.kind === 'harvest');
    expect(harvests).toMatchObject([{ entry: { kilograms: 9 }, before: [{ kilograms: 90 }] }]);
  });

  it('keeps what was taken back, with the reason', () => {
    const { story, colony, history } = oneColony();
    const [wrong] = story.write({ kind: 'harvest', day: rough('2025-07-01'), colony, kilograms: 9 });
    story.write({
      kind: 'withdrawal',
      day: rough('2025-07-02'),
      withdraws: [wrong!.id],
      reason: 'another box',
    });
    const [item] = history();
    expect(item).toMatchObject({ entry: { kind: 'harvest' }, withdrawnBy: { reason: 'another box' } });
  });

  it('shows an overruled contradiction with its reason beside the entry', () => {
    const { story, colony, history } = oneColony();
    const enter = (name: string) =>
      ({ kind: 'queen-entered', day: rough('2025-05-01'), queen: story.queen(name), colony }) as const;
    story.write(enter('Mother'));
    story.write({
      ...enter('Daughter'),
      overruled: [{ rule: 'two-queens-in-colony', reason: 'side by side' }],
    });
    const overruled = history().flatMap(({ contradictions }) => contradictions.map((each) => each.overruled));
    expect(overruled).toEqual(['side by side']);
  });
});

describe('the queens expected in a colony', () => {
  it('are drawn from the day they were made to the day they came or failed', () => {
    const { story, colony } = oneColony();
    const queen = story.queen('Daughter');
    story.write({ kind: 'queen-entered', day: rough('2025-05-01'), queen: story.queen('Mother'), colony });
    story.write({ kind: 'queen-expected', day: rough('2025-06-01'), queen, colony, reason: 'supersedure' });
    story.write({ kind: 'queen-confirmed', day: rough('2025-06-30'), queen, colony, seen: 'eggs' });
    const registry = project(story.journal());
    expect(waitingOf(registry.colonies.get(colony)!, registry)).toEqual([
      { queen, from: '2025-06-01', to: '2025-06-30', came: true },
    ]);
  });
});
