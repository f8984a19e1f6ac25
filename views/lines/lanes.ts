/**
 * Which lane each queen's span of time runs in. Lines stand one below the other, each a strip of lanes; inside a
 * strip a dam runs above her daughters.
 *
 * Rule: go down the tree from the founder, each dam's youngest daughter first, and give each queen the first lane
 * below everything already placed that shares a day with her. Since whatever lies between a dam and an older
 * daughter began later than that daughter, the line that joins the two crosses nothing: the drawing has no
 * crossings, and a lane is used again once its queen is gone. Cost O(queens x days of a life / BUCKET_DAYS).
 */
import { pushTo } from '../../graph/grouping.ts';

export interface Span {
  readonly id: string;
  /** The strip she runs in. */
  readonly line: string;
  readonly dam?: string | undefined;
  /** First and last day number that she or her name takes up in the drawing. */
  readonly from: number;
  readonly until: number;
}

export interface Strip {
  readonly line: string;
  /** First lane, counted through all strips. */
  readonly first: number;
  readonly lanes: number;
}

export interface Lanes {
  /** Lane of each span by its id, counted through all strips. */
  readonly lane: ReadonlyMap<string, number>;
  readonly strips: readonly Strip[];
  readonly lanes: number;
}

const BUCKET_DAYS = 4;

/** Places the spans; strips stand in the order in which their lines are first met. */
export function assignLanes(spans: readonly Span[]): Lanes {
  const family = familyOf(spans);
  const origin = spans.reduce((first, { from }) => Math.min(first, from), Number.POSITIVE_INFINITY);
  const lane = new Map<string, number>();
  const strips: Strip[] = [];
  let free = 0;
  for (const [line, roots] of family.roots) {
    const skyline = new Skyline(origin);
    for (const root of roots) {
      for (const span of downwards(root, family.daughters)) {
        lane.set(span.id, free + skyline.place(span.from, family.reach.get(span.id) ?? span.until));
      }
    }
    strips.push({ line, first: free, lanes: skyline.lanes });
    free += skyline.lanes;
  }
  return { lane, strips, lanes: free };
}

interface Family {
  readonly roots: ReadonlyMap<string, readonly Span[]>;
  /** Daughters of each dam, youngest first; of those of one day the longest lived first. */
  readonly daughters: ReadonlyMap<string, readonly Span[]>;
  /** Last day of a span, drawn out to the birth of the last daughter. */
  readonly reach: ReadonlyMap<string, number>;
}

function familyOf(spans: readonly Span[]): Family {
  const here = new Set(spans.map(({ id }) => id));
  const roots = new Map<string, Span[]>();
  const daughters = new Map<string, Span[]>();
  const reach = new Map<string, number>(spans.map(({ id, until }) => [id, until]));
  for (const span of spans) {
    const dam = span.dam !== undefined && here.has(span.dam) ? span.dam : undefined;
    pushTo(dam === undefined ? roots : daughters, dam ?? span.line, span);
    if (dam !== undefined) reach.set(dam, Math.max(reach.get(dam) ?? span.from, span.from));
  }
  for (const list of daughters.values()) {
    list.sort((a, b) => b.from - a.from || b.until - a.until || (a.id < b.id ? -1 : 1));
  }
  return { roots, daughters, reach };
}

function* downwards(root: Span, daughters: Family['daughters']): Generator<Span> {
  const waiting = [root];
  for (let span = waiting.pop(); span; span = waiting.pop()) {
    yield span;
    waiting.push(...(daughters.get(span.id) ?? []).toReversed());
  }
}

/** For each stretch of days, how many lanes are taken from the top. */
class Skyline {
  readonly #origin: number;
  readonly #taken: number[] = [];
  lanes = 0;

  constructor(origin: number) {
    this.#origin = origin;
  }

  place(from: number, until: number): number {
    const first = Math.floor((from - this.#origin) / BUCKET_DAYS);
    const last = Math.max(first, Math.floor((until - this.#origin) / BUCKET_DAYS));
    let lane = 0;
    for (let bucket = first; bucket <= last; bucket += 1) lane = Math.max(lane, this.#taken[bucket] ?? 0);
    for (let bucket = first; bucket <= last; bucket += 1) this.#taken[bucket] = lane + 1;
    this.lanes = Math.max(this.lanes, lane + 1);
    return lane;
  }
}
