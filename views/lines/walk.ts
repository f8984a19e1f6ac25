import type { QueenId } from '../../src/journal/ids.ts';
import type { DrawnQueen, Geometry } from './geometry.ts';
import { type View, viewX, viewY } from './view.ts';

export type Step = 'dam' | 'daughter' | 'up' | 'down';

/** The step that an arrow key asks for: time runs to the right, so her dam is to the left and her daughters right. */
export function stepOfKey(key: string): Step | undefined {
  switch (key) {
    case 'ArrowLeft':
      return 'dam';
    case 'ArrowRight':
      return 'daughter';
    case 'ArrowUp':
      return 'up';
    case 'ArrowDown':
      return 'down';
    default:
      return undefined;
  }
}

/**
 * The queen one step on. Up and down go among sisters as they stand in the drawing, founders among founders; from
 * nowhere every step leads to the first queen. Undefined where there is nobody.
 */
export function walk(geometry: Geometry, from: QueenId | undefined, step: Step): QueenId | undefined {
  const here = from === undefined ? undefined : geometry.byId.get(from);
  if (!here) return topmost(geometry.queens)?.life.id;
  if (step === 'dam') {
    const { dam } = here.life;
    return dam !== undefined && geometry.byId.has(dam) ? dam : undefined;
  }
  if (step === 'daughter') {
    const daughters = geometry.queens.filter(({ life }) => life.dam === here.life.id);
    return topmost(daughters.filter(({ carries }) => carries))?.life.id ?? topmost(daughters)?.life.id;
  }
  const sisters = geometry.queens.filter(
    ({ life }) => damIn(geometry, life.dam) === damIn(geometry, here.life.dam),
  );
  const beyond = sisters.filter(({ y }) => (step === 'up' ? y < here.y : y > here.y));
  return (step === 'up' ? lowest(beyond) : topmost(beyond))?.life.id;
}

function damIn(geometry: Geometry, dam: QueenId | undefined): QueenId | undefined {
  return dam !== undefined && geometry.byId.has(dam) ? dam : undefined;
}

function topmost(queens: readonly DrawnQueen[]): DrawnQueen | undefined {
  return queens.reduce<DrawnQueen | undefined>(
    (best, each) => (best && best.y <= each.y ? best : each),
    undefined,
  );
}

function lowest(queens: readonly DrawnQueen[]): DrawnQueen | undefined {
  return queens.reduce<DrawnQueen | undefined>(
    (best, each) => (best && best.y >= each.y ? best : each),
    undefined,
  );
}

/** How far from a life a tap may fall, in pixels. */
const REACH = 26;

/** The queen whose life line, or whose name beside the drawing, is nearest to a place on the screen. */
export function nearest(
  geometry: Geometry,
  view: View,
  place: { readonly x: number; readonly y: number },
  plot: number,
): QueenId | undefined {
  let best: QueenId | undefined;
  let least = REACH;
  const beside = place.x > plot;
  for (const queen of geometry.queens) {
    const rise = Math.abs(viewY(view, queen.y) - 3 - place.y);
    if (rise > REACH) continue;
    const here = queen.life.fate === 'living' || queen.life.fate === 'expected';
    const from = viewX(view, queen.from);
    const to = viewX(view, queen.to);
    const aside = beside ? (here ? 0 : REACH) : Math.max(0, from - place.x, place.x - to);
    const away = Math.hypot(rise, aside);
    if (away < least) {
      least = away;
      best = queen.life.id;
    }
  }
  return best;
}
