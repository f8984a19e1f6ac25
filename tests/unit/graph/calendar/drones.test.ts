import { describe, expect, it } from 'vitest';
import { droneRipeness, flightsAfter, meetsRipeDrones } from '../../../../graph/calendar/drones.ts';

describe("the ripeness of a colony's drones", () => {
  it('is not known where no drones or drone brood were seen', () => {
    expect(droneRipeness([])).toBeUndefined();
    expect(droneRipeness([{ day: 100, stage: 'none' }])).toBeUndefined();
  });

  it('is sooner the older the brood that was seen', () => {
    const likely = (['eggs', 'open-brood', 'capped-brood', 'flying'] as const).map(
      (stage) => droneRipeness([{ day: 100, stage }])!.likely,
    );
    expect(likely).toEqual([...likely].sort((a, b) => b - a));
    expect(likely[3]).toBeLessThanOrEqual(102);
  });

  it('is bounded from below by a day on which there were none', () => {
    const seen = { day: 100, stage: 'capped-brood' } as const;
    const alone = droneRipeness([seen])!;
    const bounded = droneRipeness([{ day: 90, stage: 'none' }, seen])!;
    expect(bounded.earliest).toBeGreaterThan(alone.earliest);
    expect(bounded.latest).toBe(alone.latest);
    expect(bounded.likely).toBeGreaterThanOrEqual(bounded.earliest);
  });

  it('takes the first drones, however many sights follow', () => {
    const first = { day: 100, stage: 'eggs' } as const;
    expect(droneRipeness([first, { day: 140, stage: 'eggs' }])!.latest).toBe(droneRipeness([first])!.latest);
  });
});

describe('whether a planned virgin meets ripe drones', () => {
  const ripe = droneRipeness([{ day: 100, stage: 'eggs' }])!;
  const emerging = (day: number) => flightsAfter({ earliest: day, likely: day, latest: day });

  it('goes from too early to ripe as she emerges later', () => {
    const verdicts = [105, 120, 132, 140].map((day) => meetsRipeDrones(emerging(day), ripe).meeting);
    expect(verdicts).toEqual(['too-early', 'likely-too-early', 'likely-ripe', 'ripe']);
  });

  it('says by how many days she is early and by when drone eggs were needed', () => {
    // Flights likely on 127, ripe likely on 98 + 36 = 134.
    expect(meetsRipeDrones(emerging(120), ripe)).toEqual({
      meeting: 'likely-too-early',
      daysShort: 7,
      droneEggsBy: 127 - 36,
    });
  });

  it('is unknown where nothing is known of drones', () => {
    expect(meetsRipeDrones(emerging(120), undefined).meeting).toBe('unknown');
  });
});
