import { describe, expect, it } from 'vitest';
import { whoseEggs } from '../../../src/registry/brood.ts';
import { anotherFound, markLost, unmarkedSeenIn } from '../../../src/registry/unmarked.ts';
import { wintersCrossed, wintersEntered } from '../../../src/registry/winters-of-queen.ts';
import { unmarkedText } from '../../../views/parts/unmarked-words.ts';
import { lookDrafts } from '../../../views/record/inspection/seen.ts';
import { asksWhoSheIs } from '../../../views/rounds/grouping.ts';
import { reading } from '../../helpers/reading.ts';
import { day, rough, Story } from '../../helpers/story.ts';

/** Brook, marked in May and last seen with her mark in June; an unmarked queen in her box on 3 August. */
function unmarkedSeen(): Story {
  const story = new Story();
  story.begin('Mill', '2025-05-01', { One: 'Brook', Two: 'Birch' });
  story.write({
    kind: 'queen-marked',
    day: rough('2025-05-20'),
    queen: story.queen('Brook'),
    colour: 'blue',
  });
  look(story, '2025-06-10', 'seen-marked');
  look(story, '2025-08-03', 'seen-unmarked');
  return story;
}

function look(story: Story, on: string, queenSeen: 'seen-marked' | 'seen-unmarked'): void {
  story.write({ kind: 'inspection', day: rough(on), colony: story.colony('One'), queenSeen });
}

function question(story: Story, on: string) {
  const { registry } = reading(story, ['Brook'], on);
  const colony = registry.colonies.get(story.colony('One'));
  return colony && unmarkedSeenIn(registry, colony, day(on));
}

describe('an unmarked queen seen where a marked one heads, without a word on who she is', () => {
  it('leaves a question open from that day on', () => {
    expect(question(unmarkedSeen(), '2025-08-02')).toBeUndefined();
    const open = question(unmarkedSeen(), '2025-09-01');
    expect(open).toMatchObject({ seen: '2025-08-03', head: { name: 'Brook' } });
  });

  it('puts the workers in doubt from the day on which the marked queen was last seen', () => {
    const { workers, registry } = reading(unmarkedSeen(), ['Brook']);
    expect(workers('One', '2025-06-30')).toBe('Brook');
    expect(workers('One', '2025-12-01')).toBe('nobody-known');
    expect(registry.contradictions).toEqual([]);
  });

  it('makes her the dam of the eggs surely before, and only as likely as not after', () => {
    const { registry } = reading(unmarkedSeen(), []);
    const dams = (on: string) =>
      whoseEggs(registry, unmarkedSeen().colony('One'), day(on), { youngest: 0, oldest: 3 });
    expect(dams('2025-06-09')).toMatchObject([{ probability: 1 }]);
    expect(dams('2025-08-20')).toMatchObject([{ probability: 0.5 }]);
  });

  it('counts the winter that follows for nobody', () => {
    const story = unmarkedSeen();
    story.write({ kind: 'inspection', day: rough('2026-04-20'), colony: story.colony('One'), eggs: true });
    const brook = reading(story, ['Brook']).queen('Brook');
    expect(wintersCrossed(brook, day('2026-06-01'))).toEqual([]);
    expect(wintersEntered(brook, day('2026-06-01'))).toEqual([]);
  });

  it('is said in words, and makes the box a stop of the round until it is answered', () => {
    const open = question(unmarkedSeen(), '2025-09-01');
    expect(open && unmarkedText(open, day('2025-09-01'))).toBe(
      'An unmarked queen was seen on 3 August; Brook was marked.',
    );
    const story = unmarkedSeen();
    const stop = (on: string) => {
      const { registry } = reading(story, [], on);
      return asksWhoSheIs(registry, { colony: story.colony('One'), tasks: [] }, day(on));
    };
    expect(stop('2025-10-01')).toBe(true);
    story.write(markLost(story.colony('One'), story.queen('Brook'), rough('2025-10-01')));
    expect(stop('2025-10-01')).toBe(false);
  });

  it('is answered by the marked queen seen again', () => {
    const story = unmarkedSeen();
    look(story, '2025-08-20', 'seen-marked');
    expect(question(story, '2025-09-01')).toBeUndefined();
    expect(reading(story, ['Brook']).workers('One', '2025-12-01')).toBe('Brook');
  });

  it('is answered in one tap that she lost her mark, and not asked again', () => {
    const story = unmarkedSeen();
    story.write(markLost(story.colony('One'), story.queen('Brook'), rough('2025-08-10')));
    look(story, '2025-08-20', 'seen-unmarked');
    expect(question(story, '2025-09-01')).toBeUndefined();
    const { queen, workers } = reading(story, ['Brook']);
    expect(workers('One', '2025-12-01')).toBe('Brook');
    expect(queen('Brook').mark).toBeUndefined();
  });

  it('is answered in one tap that she is another, found on the day of the sight', () => {
    const story = unmarkedSeen();
    const open = question(story, '2025-08-30');
    if (!open) throw new Error('Nothing is asked.');
    story.write(anotherFound(story.colony('One'), open, story.queen('found')));
    expect(question(story, '2025-09-01')).toBeUndefined();
    const { state, queen, head } = reading(story, ['Brook', 'found']);
    expect(state('Brook')).toBe('gone: superseded');
    expect(queen('Brook').tenures.at(-1)).toMatchObject({ to: '2025-08-03', surelyUntil: '2025-06-10' });
    expect(head('One', '2025-08-04')).toBe('found');
  });

  it('goes with the queen into the box she is moved to', () => {
    const story = unmarkedSeen();
    story.threeWaySplit('2025-08-10', 'Mill', 'One', 'Nucleus', 'Three', 'Brook');
    const { registry } = reading(story, ['Brook']);
    const nucleus = registry.colonies.get(story.colony('Nucleus'));
    expect(nucleus && unmarkedSeenIn(registry, nucleus, day('2025-08-11'))?.seen).toBe('2025-08-03');
  });

  it('is not asked where the form was answered at once', () => {
    const story = unmarkedSeen();
    const one = story.colony('One');
    const drafts = lookDrafts(
      { seen: { queenSeen: 'seen-unmarked' }, another: false },
      one,
      rough('2025-08-04'),
      story.queen('Brook'),
    );
    story.write(...(drafts ?? []));
    expect(question(story, '2025-09-01')).toBeUndefined();
  });
});
