import { describe, expect, it } from 'vitest';
import { writeEntries } from '../../../../src/journal/write.ts';
import { lookDrafts, NOTHING_SEEN } from '../../../../views/record/inspection/seen.ts';
import { nextColony, walkOf } from '../../../../views/record/walk.ts';
import { DEMO_DAY, demoColony, demoRegistry } from '../../../helpers/demo.ts';
import { rough, testId, testScribe } from '../../../helpers/story.ts';

const colony = testId(1) as never;
const head = testId(2) as never;
const on = rough('2026-06-11');

describe('a look into a hive', () => {
  it('writes nothing while nothing was tapped', () => {
    expect(lookDrafts(NOTHING_SEEN, colony, on, head)).toBeUndefined();
    expect(lookDrafts({ seen: { eggs: undefined, note: '  ' } }, colony, on, head)).toBeUndefined();
  });

  it('writes only what was tapped, and looked for and not there as such', () => {
    const drafts = lookDrafts(
      { seen: { eggs: false, framesOfBees: 8, gentle: undefined } },
      colony,
      on,
      head,
    );
    expect(drafts).toEqual([{ kind: 'inspection', day: on, colony, eggs: false, framesOfBees: 8 }]);
  });

  it('confirms an expected queen only where the keeper says that she lays', () => {
    expect(lookDrafts({ seen: { eggs: true } }, colony, on, undefined)).toHaveLength(1);
    const drafts = lookDrafts({ seen: { eggs: true }, lays: head }, colony, on, undefined);
    expect(drafts?.[1]).toEqual({ kind: 'queen-confirmed', day: on, queen: head, colony, seen: 'eggs' });
  });

  it('enters another queen in the place of the one known where the keeper says so', () => {
    const drafts = lookDrafts({ seen: { queenSeen: 'seen-unmarked' }, another: true }, colony, on, head);
    expect(drafts?.[1]).toMatchObject({ kind: 'queen-found', insteadOf: head, colony });
  });

  it('is accepted by the schemas', () => {
    const drafts = lookDrafts(
      { seen: { queenSeen: 'virgin', openCells: 0, note: 'rain' } },
      colony,
      on,
      head,
    );
    expect(writeEntries(drafts!, testScribe()).ok).toBe(true);
  });
});

describe('the walk along a yard', () => {
  it('visits every colony of the yard once and ends', () => {
    const registry = demoRegistry();
    const walk = walkOf(registry, demoColony('S9'), DEMO_DAY);
    const seen = new Set<string>();
    for (let at = walk[0]; at; at = nextColony(registry, at, DEMO_DAY)) {
      expect(seen.has(at.id)).toBe(false);
      seen.add(at.id);
    }
    expect(seen.size).toBe(walk.length);
  });

  it('keeps the two colonies under one roof together', () => {
    const labels = walkOf(demoRegistry(), demoColony('H2'), DEMO_DAY).map(({ label }) => label);
    expect(Math.abs(labels.indexOf('H2') - labels.indexOf('H12'))).toBe(1);
  });
});
