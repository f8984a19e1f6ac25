import { describe, expect, it } from 'vitest';
import { BIOLOGY } from '../../graph/calendar/biology.ts';
import { DRONE_EGG_TO_RIPE, droneRipeness, meetsRipeDrones } from '../../graph/calendar/drones.ts';

/**
 * Drones: 24 days from egg to emergence, ripe 10 to 14 days later (Winston 1987, The Biology of the Honey Bee, from
 * memory, not re-read). Metz & Tarpy 2019, Insects 10:11 (abstract read): no sperm in the vesicles at emergence, the
 * most about day 20 of adult life.
 */
describe('published ages of drones', () => {
  it('make a drone ripe 36 to 40 days from the egg as a rule, 10 to 14 days after emergence', () => {
    expect(DRONE_EGG_TO_RIPE.likely).toBeGreaterThanOrEqual(24 + 10);
    expect(DRONE_EGG_TO_RIPE.likely).toBeLessThanOrEqual(24 + 14);
  });

  it('make him ripe after emergence and before the day of most sperm', () => {
    expect(BIOLOGY.droneRipe.earliest).toBeGreaterThan(0);
    expect(BIOLOGY.droneRipe.latest).toBeLessThan(20);
  });

  it('ask for drone eggs 14 days before the egg of a queen who first flies on day 22: 24 + 12 - 22', () => {
    const queenEgg = 1000;
    const flights = { earliest: queenEgg + 22, likely: queenEgg + 22, latest: queenEgg + 22 };
    expect(queenEgg - meetsRipeDrones(flights, undefined).droneEggsBy).toBe(14);
  });

  /** Common practice, no source: begin to raise queens when the first drone brood is capped. */
  it('have drones ripe for a graft made when drone brood is capped', () => {
    const graft = 1000;
    const ripe = droneRipeness([{ day: graft, stage: 'capped-brood' }])!;
    const flight = graft + 12 + BIOLOGY.matingFlight.likely;
    expect(ripe.likely).toBeLessThanOrEqual(flight + 1);
  });
});
