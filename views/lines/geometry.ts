import { pushTo } from '../../graph/grouping.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import type { MakingHow } from '../../src/registry/state.ts';
import { assignLanes, type Span } from './lanes.ts';
import type { Life } from './lives.ts';
import { textWidth } from './text-width.ts';
import type { TimeScale } from './time-scale.ts';

/** Where everything of the drawing stands, in pixels at rest; zooming stretches these places, never the type. */

/** Sizes of one rendering, in pixels. */
export interface Metrics {
  readonly lane: number;
  /** Room over the first lane of a strip, for the name of the line. */
  readonly stripHead: number;
  /** Type size of the names written on the lives of those who are gone. */
  readonly label: number;
  /** Whether room is kept for those names; not in a registry of thousands. */
  readonly keepRoomForNames: boolean;
}

export interface DrawnQueen {
  readonly life: Life;
  readonly y: number;
  readonly from: number;
  /** Where she begins to head a colony; before it she is awaited. */
  readonly laying?: number;
  readonly to: number;
  /** Right end of the line drawn out to a daughter born after her end. */
  readonly reach: number;
  readonly winters: readonly { readonly spring: number; readonly x: number }[];
  /** Written on the drawing; those alive today have their names beside it. */
  readonly name?: string;
  /** Has living queens in her descent, or is one. */
  readonly carries: boolean;
}

export interface JointDaughter {
  readonly id: QueenId;
  readonly y: number;
  readonly firm: boolean;
  readonly carries: boolean;
}

/** Sisters made together, hanging on their dam's life by one joint. */
export interface Joint {
  readonly key: string;
  readonly dam: QueenId;
  readonly how: MakingHow | 'unknown';
  readonly x: number;
  readonly y: number;
  readonly daughters: readonly JointDaughter[];
  readonly carries: boolean;
}

export interface DrawnStrip {
  readonly line: QueenId;
  readonly y: number;
  readonly height: number;
}

export interface Geometry {
  readonly queens: readonly DrawnQueen[];
  readonly byId: ReadonlyMap<QueenId, DrawnQueen>;
  readonly joints: readonly Joint[];
  readonly strips: readonly DrawnStrip[];
  readonly width: number;
  readonly height: number;
}

/** Pixels kept free behind a life, so that its end mark stands clear of the next. */
const END_ROOM = 12;

/** Places the lives; strips follow the order of `lines`. */
export function placeLives(
  lives: readonly Life[],
  lines: readonly QueenId[],
  scale: TimeScale,
  metrics: Metrics,
): Geometry {
  const rank = new Map(lines.map((line, index) => [line, index]));
  const shown = lives
    .filter(({ line }) => rank.has(line))
    .sort((a, b) => (rank.get(a.line) ?? 0) - (rank.get(b.line) ?? 0));
  const lanes = assignLanes(shown.map((life) => spanOf(life, scale, metrics)));
  const tops = new Map<string, number>();
  const strips: DrawnStrip[] = [];
  let y = 0;
  for (const strip of lanes.strips) {
    const height = metrics.stripHead + strip.lanes * metrics.lane;
    tops.set(strip.line, y + metrics.stripHead - strip.first * metrics.lane);
    strips.push({ line: strip.line as QueenId, y, height });
    y += height;
  }
  const lastDaughter = lastDaughters(shown);
  const springs = new Map(scale.years.map(({ winter }) => [winter?.spring, winter?.to]));
  const queens = shown.map((life) => {
    const lane = lanes.lane.get(life.id) ?? 0;
    const top = (tops.get(life.line) ?? 0) + (lane + 0.68) * metrics.lane;
    return drawnQueen(life, top, scale, lastDaughter.get(life.id), springs);
  });
  const byId = new Map(queens.map((queen) => [queen.life.id, queen]));
  return { queens, byId, joints: jointsOf(queens, byId), strips, width: scale.width, height: y };
}

function isHere({ fate }: Life): boolean {
  return fate === 'living' || fate === 'expected';
}

function spanOf(life: Life, scale: TimeScale, metrics: Metrics): Span {
  const { id, line, dam, start } = life;
  if (isHere(life)) return { id, line, dam, from: start, until: scale.day(scale.width) };
  const end = scale.x(life.end ?? start) + END_ROOM;
  const named = life.named && metrics.keepRoomForNames;
  const name = named ? scale.x(start) + textWidth(life.title, metrics.label) + END_ROOM : 0;
  return { id, line, dam, from: start, until: scale.day(Math.min(scale.width, Math.max(end, name))) };
}

function lastDaughters(lives: readonly Life[]): ReadonlyMap<QueenId, number> {
  const last = new Map<QueenId, number>();
  for (const { dam, start } of lives) if (dam) last.set(dam, Math.max(start, last.get(dam) ?? start));
  return last;
}

function drawnQueen(
  life: Life,
  y: number,
  scale: TimeScale,
  lastDaughter: number | undefined,
  springs: ReadonlyMap<number | undefined, number | undefined>,
): DrawnQueen {
  const from = scale.x(life.start);
  const to = life.end === undefined ? scale.width : Math.max(scale.x(life.end), from + 5);
  return {
    life,
    y,
    from,
    ...(life.laying === undefined ? {} : { laying: Math.min(to, scale.x(life.laying)) }),
    to,
    reach: Math.max(to, lastDaughter === undefined ? to : scale.x(lastDaughter)),
    winters: life.winters.flatMap((year) => {
      const x = springs.get(year);
      return x === undefined ? [] : [{ spring: year, x }];
    }),
    ...(life.named && !isHere(life) ? { name: life.title } : {}),
    carries: life.livingBelow > 0 || life.fate === 'expected',
  };
}

/** One joint for the daughters that a dam got in one way on one day: those of a split, the cells of one graft. */
function jointsOf(queens: readonly DrawnQueen[], byId: ReadonlyMap<QueenId, DrawnQueen>): readonly Joint[] {
  const groups = new Map<string, DrawnQueen[]>();
  for (const queen of queens) {
    const { dam, how, start } = queen.life;
    if (!dam || !byId.has(dam)) continue;
    pushTo(groups, `${dam} ${start} ${how ?? 'unknown'}`, queen);
  }
  return [...groups].flatMap(([key, group]) => {
    const first = group[0]?.life;
    const dam = first?.dam && byId.get(first.dam);
    return first && dam ? [jointOf(key, dam, first, group)] : [];
  });
}

function jointOf(key: string, dam: DrawnQueen, first: Life, group: readonly DrawnQueen[]): Joint {
  return {
    key,
    dam: dam.life.id,
    how: first.how ?? 'unknown',
    x: Math.min(...group.map(({ from }) => from)),
    y: dam.y,
    daughters: group
      .map(({ life, y, carries }) => ({ id: life.id, y, firm: life.certainty === 'firm', carries }))
      .sort((a, b) => a.y - b.y),
    carries: group.some((queen) => queen.carries),
  };
}
