import { describe, expect, it } from 'vitest';
import { BIOLOGY } from '../../graph/calendar/biology.ts';
import { inferQueenCalendar, type QueenCalendar } from '../../graph/calendar/infer.ts';
import type { Making } from '../../graph/calendar/making.ts';

/** Days since 1970-01-01 of a day of May 2026. */
const may = (day: number): number => Date.UTC(2026, 4, day) / 86_400_000;

const calendar = (making: Making): QueenCalendar =>
  inferQueenCalendar({ making, observations: [], on: making.day });

/**
 * Development times of Apis mellifera: queen 16 days (capped about day 8), worker 21 (capped about day 9), drone 24
 * (capped about day 10). Winston 1987, The Biology of the Honey Bee: from memory, not re-read; the sums 3 + 5 + 8
 * (queen), + 5 (worker), + 3 (drone) were read in general reference pages.
 */
describe('published development times', () => {
  it('take a queen from egg to emergence in 16 days, a worker in 21, a drone in 24', () => {
    expect(BIOLOGY.queenEmergence.likely).toBe(3 + 5 + 8);
    expect(BIOLOGY.workerEmergence.likely).toBe(3 + 5 + 8 + 5);
    expect(BIOLOGY.droneEmergence.likely).toBe(3 + 5 + 8 + 5 + 3);
  });

  it('cap a queen about day 8, a worker about day 9, a drone about day 10', () => {
    const capped = [BIOLOGY.queenCapped, BIOLOGY.workerCapped, BIOLOGY.droneCapped];
    expect(capped.map(({ likely }) => likely)).toEqual([8, 9, 10]);
  });

  it('keep the day 15.5 to 17 for the emergence of a queen within the window', () => {
    expect(BIOLOGY.queenEmergence.earliest).toBeLessThanOrEqual(15.5);
    expect(BIOLOGY.queenEmergence.latest).toBeGreaterThanOrEqual(17);
  });

  it('let an egg of 1 May be a capped cell by 8 or 9 May, a virgin on 16 to 18 May, and lay from 23 May on', () => {
    const { windows } = calendar({ kind: 'cells-left', day: may(4), age: 'open', eggsLaid: may(1) });
    expect(windows.capped).toEqual({ earliest: may(8), likely: may(9), latest: may(10) });
    expect(windows.emerged).toEqual({ earliest: may(16), likely: may(17), latest: may(18) });
    expect(windows.laying?.earliest).toBe(may(23));
  });

  it('let a queen fly first within a week or so of emergence (Heidinger et al. 2014, Insects 5:513)', () => {
    const { windows } = calendar({ kind: 'virgin-given', day: may(17), emerged: may(17) });
    expect(windows.mated?.likely).toBe(may(17 + 7));
  });

  it('give a graft of larvae aged 0, 1, 2, 3 days a queen 13, 12, 11, 10 days later: 16 - 3 - age', () => {
    const after = [0, 1, 2, 3].map((age) => {
      const { windows } = calendar({ kind: 'graft', day: may(1), larvaAgeFrom: age, larvaAgeTo: age });
      return windows.emerged!.likely - may(1);
    });
    expect(after).toEqual([13, 12, 11, 10]);
  });

  it('call the workers hers about 40 days after she begins (Büchler et al. 2013, J. Apic. Res. 52(1), 3.1.4)', () => {
    const { windows } = calendar({ kind: 'mated-queen-given', day: may(1), caged: false });
    expect(windows.allHers!.likely - windows.laying!.likely).toBe(40);
  });
});

/**
 * Fell & Morse 1984, Insectes Sociaux 31:221 (abstract read): after the queen was taken, cells were begun within 12 to
 * 48 hours, over larvae of up to 4 days of age (counted from 1), and as late as eight or nine days on. Punnett &
 * Winston 1983, Insectes Sociaux 30:376 (abstract read): 91 % of the queens that emerged were still eggs on the day.
 */
describe('published observations of colonies that lost their queen', () => {
  const { windows } = calendar({ kind: 'made-queenless', day: may(1) });

  it('let the eldest larva be in its fourth day and the youngest an egg of the day', () => {
    expect(windows.hatched?.earliest).toBe(may(1) - 3);
    expect(windows.laid?.latest).toBe(may(1));
  });

  it('take the queen for an egg on that day, as nine in ten were', () => {
    expect(windows.laid!.likely).toBeLessThanOrEqual(may(1));
    expect(windows.laid!.likely).toBeGreaterThanOrEqual(may(1) - BIOLOGY.eggHatch.likely);
  });
});

/** Common practice, no source: what keepers expect of a colony made queenless. */
describe('common practice after a colony was made queenless', () => {
  const { windows } = calendar({ kind: 'made-queenless', day: may(1) });

  it('has capped emergency cells on day 6', () => {
    expect(windows.capped!.likely).toBeLessThanOrEqual(may(7));
  });

  it('has a queen out within about ten days of then', () => {
    expect(windows.emerged!.likely).toBeLessThanOrEqual(may(7) + 10);
    expect(windows.emerged!.latest).toBeLessThanOrEqual(may(7) + 11);
  });

  it('has eggs a couple of weeks after she is out', () => {
    const wait = windows.laying!.likely - windows.emerged!.likely;
    expect(wait).toBeGreaterThanOrEqual(10);
    expect(wait).toBeLessThanOrEqual(16);
  });

  it('is given up about four weeks after the last day on which she can have emerged', () => {
    expect(windows.laying!.latest - windows.emerged!.latest).toBe(28);
  });
});
