import type { Answer, FindingCode, Seen, Task } from '../../graph/calendar/index.ts';
import type { PlainDay } from '../../src/journal/day.ts';
import type { Draft } from '../../src/journal/entry.ts';
import type { ColonyId, EntryId, QueenId } from '../../src/journal/ids.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';

/**
 * What one tap on a finding writes, or where it leads when the work itself has to be recorded. A finding that shows the
 * expected queen laying confirms her; with several expected, the keeper says which.
 */
export type Reply =
  | { readonly is: 'drafts'; readonly drafts: readonly Draft[] }
  | { readonly is: 'which-queen'; readonly queens: readonly QueenId[] }
  | { readonly is: 'page'; readonly href: string };

const CONFIRMS: Partial<Record<FindingCode, 'eggs' | 'worker-brood' | 'queen-laying'>> = {
  eggs: 'eggs',
  'queen-laying': 'queen-laying',
  'worker-brood': 'worker-brood',
};

/** The tasks at which eggs are those of the awaited queen, and not of one overlooked. */
const AWAITS: ReadonlySet<string> = new Set(['look-for-eggs', 'look-for-worker-brood', 'look-for-release']);

/** What a tapped answer records; a page where it needs more, the queens to choose from where several are awaited. */
export function replyTo(
  registry: Registry,
  task: Task,
  answer: Answer,
  on: PlainDay,
  which?: QueenId,
): Reply | undefined {
  const colony = registry.colonies.get(task.colony as ColonyId);
  if (!colony) return undefined;
  if (answer.records === 'entry') return entryReply(task, answer.finding, colony, on);
  const seen = CONFIRMS[answer.finding];
  const inspection: Draft = {
    kind: 'inspection',
    day: on,
    colony: colony.id,
    occasion: 'calendar',
    ...fields(answer.seen),
  };
  if (!seen || !AWAITS.has(task.code) || colony.expected.length === 0)
    return { is: 'drafts', drafts: [inspection] };
  const queen = which ?? (colony.expected.length === 1 ? colony.expected[0] : undefined);
  if (!queen) return { is: 'which-queen', queens: colony.expected };
  const confirmed: Draft = { kind: 'queen-confirmed', day: on, queen, colony: colony.id, seen };
  return { is: 'drafts', drafts: [inspection, confirmed] };
}

/** What was seen, in the fields of an inspection. A cell seen is at least one cell. */
function fields(seen: Seen): Partial<Extract<Draft, { kind: 'inspection' }>> {
  const cells = (any: boolean | undefined) => (any === undefined ? undefined : any ? 1 : 0);
  const queen = {
    old: 'seen-marked',
    virgin: 'virgin',
    unmarked: 'seen-unmarked',
    laying: 'seen-unmarked',
  } as const;
  const all = {
    eggs: seen.eggs,
    youngBrood: seen.youngBrood,
    cappedWorkerBrood: seen.cappedWorkerBrood,
    droneBroodOnly: seen.droneBroodOnly,
    severalEggsInCells: seen.severalEggsInCells,
    openCells: cells(seen.openCells),
    cappedCells: cells(seen.cappedCells),
    emergedCells: cells(seen.emergedCells),
    tornCells: cells(seen.tornCells),
    queenSeen: seen.queen && queen[seen.queen],
  };
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
}

function entryReply(task: Task, finding: FindingCode, colony: Colony, on: PlainDay): Reply {
  const winter = Number(on.slice(0, 4));
  if (task.code === 'winter-outcome' && finding === 'alive') {
    return {
      is: 'drafts',
      drafts: [{ kind: 'winter-outcome', day: on, colony: colony.id, winter, alive: true }],
    };
  }
  if (task.code === 'end-treatment') {
    const treatment = task.uid.split(':').at(-1) as EntryId;
    return { is: 'drafts', drafts: [{ kind: 'treatment-ended', day: on, treatment }] };
  }
  const page = finding === 'dead' ? 'winter' : (PAGE_OF[task.code] ?? 'other');
  return { is: 'page', href: routes.record(colony.id, page) };
}

const PAGE_OF: Partial<Record<Task['code'], Parameters<typeof routes.record>[1]>> = {
  'mite-count': 'mites',
  'autumn-preparation': 'inspection',
  'spring-strength': 'inspection',
  'winter-outcome': 'winter',
  'mark-queen': 'queen',
  'look-for-release': 'queen',
};
