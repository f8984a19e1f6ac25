import { describe, expect, it } from 'vitest';
import { answersFor } from '../../../../graph/calendar/index.ts';
import { dayNumber } from '../../../../src/journal/day.ts';
import { project } from '../../../../src/registry/project.ts';
import { rounds, yearSettings } from '../../../../src/registry/rounds.ts';
import { DEFAULT_SETTINGS } from '../../../../src/store/settings.ts';
import { replyTo } from '../../../../views/rounds/answers.ts';
import { countBoxes, sortTasks } from '../../../../views/rounds/grouping.ts';
import { whichWords } from '../../../../views/rounds/which-queen.ts';
import { day, rough, Story } from '../../../helpers/story.ts';

function splitYard(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Alder' });
  story.threeWaySplit('2026-05-10', 'Mill', 'One', 'Nucleus', 'Three', 'Alder');
  return story;
}

function roundOf(story: Story, label: string, on: string) {
  const registry = project(story.journal());
  const year = yearSettings(DEFAULT_SETTINGS.yearSpans, 30, day(on));
  const all = rounds(registry, { on: day(on), horizonDays: 21, year }).flatMap(({ colonies }) => colonies);
  const round = all.find(({ colony }) => colony === story.colony(label));
  if (!round) throw new Error(`No round for ${label}.`);
  return { registry, round, all };
}

describe('the rounds after a split', () => {
  it('ask for capped cells about a week on, and keep the box shut while a virgin comes out and flies', () => {
    const story = splitYard();
    expect(roundOf(story, 'Three', '2026-05-17').round.tasks.map(({ code }) => code)).toContain(
      'look-for-cells',
    );
    const { round } = roundOf(story, 'Three', '2026-05-26');
    expect(sortTasks(round, dayNumber(day('2026-05-26'))).shut?.code).toBe('leave-closed');
  });

  it('let one tap on eggs confirm the queen, and ask no more for eggs', () => {
    const story = splitYard();
    const { registry, round } = roundOf(story, 'Three', '2026-06-08');
    const task = round.tasks.find(({ code }) => code === 'look-for-eggs');
    const answer = task && answersFor(task).find(({ finding }) => finding === 'eggs');
    const reply = task && answer && replyTo(registry, task, answer, day('2026-06-08'));
    if (reply?.is !== 'drafts') throw new Error('Eggs are answered by drafts.');
    expect(reply.drafts.map(({ kind }) => kind)).toEqual(['inspection', 'queen-confirmed']);
    story.write(...reply.drafts);
    const after = roundOf(story, 'Three', '2026-06-09');
    expect(after.registry.queens.get(story.queen('Three 2026'))?.state.is).toBe('laying');
    expect(after.round.tasks.map(({ code }) => code)).not.toContain('look-for-eggs');
  });

  it('ask which queen it is where cells of two dams were given', () => {
    const story = splitYard();
    story.write({
      kind: 'cells-given',
      day: rough('2026-05-17'),
      to: story.colony('Three'),
      expected: story.queen('second'),
      parentage: story.of('Alder'),
      age: 'capped',
    });
    const { registry, round } = roundOf(story, 'Three', '2026-06-10');
    const task = round.tasks.find(({ code }) => code === 'look-for-eggs');
    const answer = task && answersFor(task).find(({ finding }) => finding === 'eggs');
    const reply = task && answer && replyTo(registry, task, answer, day('2026-06-10'));
    if (reply?.is !== 'which-queen') throw new Error('Two queens are expected.');
    expect(whichWords(reply.queens, registry, day('2026-06-10')).map(({ words }) => words)).toEqual([
      'A daughter of Alder, raised in a split, 10 May',
      'A daughter of Alder, from cells carried over, 17 May',
    ]);
  });

  it('tell even those apart that were made alike on one day', () => {
    const story = splitYard();
    for (const name of ['second', 'third'])
      story.write({
        kind: 'cells-given',
        day: rough('2026-05-17'),
        to: story.colony('Three'),
        expected: story.queen(name),
        parentage: story.of('Alder'),
        age: 'capped',
      });
    const { expected } = project(story.journal()).colonies.get(story.colony('Three'))!;
    const words = whichWords(expected, project(story.journal()), day('2026-06-10')).map((each) => each.words);
    expect(words.slice(1)).toEqual([
      'A daughter of Alder, from cells carried over, 17 May: 1 of 2',
      'A daughter of Alder, from cells carried over, 17 May: 2 of 2',
    ]);
  });

  it('count the boxes that ask for something, stay shut, or were let slip', () => {
    const { all } = roundOf(splitYard(), 'Three', '2026-07-20');
    expect(countBoxes(all, dayNumber(day('2026-07-20'))).slipped.length).toBeGreaterThan(0);
  });

  it('leave a task out once it is set aside', () => {
    const story = splitYard();
    const { round } = roundOf(story, 'Three', '2026-06-08');
    const task = round.tasks.find(({ code }) => code === 'look-for-eggs');
    story.write({
      kind: 'task-settled',
      day: rough('2026-06-08'),
      colony: story.colony('Three'),
      task: task?.uid ?? '',
      how: 'set-aside',
    });
    expect(roundOf(story, 'Three', '2026-06-08').round.tasks.map(({ uid }) => uid)).not.toContain(task?.uid);
  });
});

describe('the tasks of the year', () => {
  const story = () => {
    const yard = new Story();
    yard.begin('Mill', '2025-05-01', { One: 'Alder' });
    return yard;
  };
  const codes = (told: Story, on: string) => roundOf(told, 'One', on).round.tasks.map(({ code }) => code);
  const looked = (told: Story, on: string, seen: { framesOfBees?: number; framesOfStores?: number }) =>
    told.write({ kind: 'inspection', day: rough(on), colony: told.colony('One'), ...seen });

  it('ask no more for the strength in spring once frames of bees were counted, for whatever reason', () => {
    const told = story();
    expect(codes(told, '2026-04-20')).toContain('spring-strength');
    looked(told, '2026-04-12', { framesOfStores: 3 });
    expect(codes(told, '2026-04-20')).toContain('spring-strength');
    looked(told, '2026-04-15', { framesOfBees: 5 });
    expect(codes(told, '2026-04-20')).not.toContain('spring-strength');
  });

  it('take the strength from the winter walk where it was told there', () => {
    const told = story();
    const outcome = {
      kind: 'winter-outcome',
      colony: told.colony('One'),
      winter: 2026,
      alive: true,
    } as const;
    told.write({ ...outcome, day: rough('2026-04-12'), springFramesOfBees: 4 });
    expect(codes(told, '2026-04-20')).not.toContain('spring-strength');
    expect(codes(told, '2026-04-20')).not.toContain('winter-outcome');
  });

  it('hold the preparation for winter as done once the stores were seen', () => {
    const told = story();
    expect(codes(told, '2026-09-20')).toContain('autumn-preparation');
    looked(told, '2026-09-10', { framesOfStores: 6 });
    expect(codes(told, '2026-09-20')).not.toContain('autumn-preparation');
  });

  it('ask after the winter of a colony of which only the year of its beginning is known', () => {
    const told = new Story();
    told.begin('Mill', '2025', { One: 'Alder' });
    expect(codes(told, '2026-04-01')).toContain('winter-outcome');
  });

  it('let a look that slipped wait while a virgin is to be left in peace', () => {
    const told = story();
    told.threeWaySplit('2026-05-12', 'Mill', 'One', 'Two', 'Three', 'Alder');
    const waiting = roundOf(told, 'Three', '2026-05-25').round;
    const late = { ...waiting.tasks[0]!, code: 'spring-strength', kind: 'look', overdue: true } as const;
    const sorted = sortTasks({ ...waiting, tasks: [...waiting.tasks, late] }, dayNumber(day('2026-05-25')));
    expect(sorted.shut?.code).toBe('leave-closed');
    expect(sorted.slipped).not.toContain(late);
    expect(sorted.coming).toContain(late);
  });

  it('lead from a dead colony to where winter losses are written down', () => {
    const told = story();
    const { registry, round } = roundOf(told, 'One', '2026-04-20');
    const task = round.tasks.find(({ code }) => code === 'spring-strength');
    const dead = task && answersFor(task).find(({ finding }) => finding === 'dead');
    const reply = task && dead && replyTo(registry, task, dead, day('2026-04-20'));
    expect(reply?.is === 'page' && reply.href).toMatch(/\/winter$/);
  });
});
