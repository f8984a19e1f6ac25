import type { QueenId, YardId } from '../../src/journal/ids.ts';
import type { Life } from './lives.ts';

export interface LinesFilter {
  /** Only this line. */
  readonly line?: QueenId | undefined;
  /** Queens who headed or are awaited in a colony at this yard, and the dams they hang on. */
  readonly yard?: YardId | undefined;
  /** Those alive or awaited, and the dams they hang on. */
  readonly living: boolean;
}

export interface Filtered {
  /** The lives to draw: those asked for and the dams that join them to their founders. */
  readonly lives: readonly Life[];
  /** Those asked for, where the dams that join them are not; absent when the two are the same. */
  readonly wanted?: ReadonlySet<QueenId>;
}

/** The lives that a filter leaves; their order is kept. */
export function filterLives(lives: readonly Life[], filter: LinesFilter): Filtered {
  const { line, yard, living } = filter;
  const ofLine = line === undefined ? lives : lives.filter((life) => life.line === line);
  if (yard === undefined && !living) return { lives: ofLine };
  const wanted = new Set<QueenId>();
  for (const life of ofLine) {
    const here = life.fate === 'living' || life.fate === 'expected';
    if ((!living || here) && (yard === undefined || life.yards.includes(yard))) wanted.add(life.id);
  }
  const needed = new Set(wanted);
  for (const { id, dam } of ofLine.toReversed()) if (dam && needed.has(id)) needed.add(dam);
  const left = ofLine.filter(({ id }) => needed.has(id));
  return yard === undefined ? { lives: left } : { lives: left, wanted };
}
