/**
 * Tasks where something is wrong: no queen on the way, laying workers, a queen who lays drones only, or a record that
 * what was seen contradicts.
 *
 *   from the day of the contradiction, within a week; help of use until laying workers are to be feared
 *
 * Sources: biology.ts (layingWorkers); remedies are common practice, no source. Cost O(observations).
 */
import { type Draft, NO_QUEEN, type Situation, type Span, TASK_DEFAULTS } from './situation.ts';
import type { FindingCode } from './task.ts';

/** At most one task, for what is wrong first. */
export function troubleTasks({ calendar, seen }: Situation): readonly Draft[] {
  const { state, scenarios, contradictions, remarks, layingWorkers } = calendar;
  const day = contradictions[0]?.day ?? remarks.at(-1)?.day;
  if (day === undefined) return [];
  const soon: Span = [day, day, day + TASK_DEFAULTS.settleWithin];
  const found = seen.some(({ day: at, queen }) => at >= day && (queen === 'old' || queen === 'laying'));
  switch (state.code) {
    case 'queenless': {
      const lastUseful = Math.max(layingWorkers.likely, day);
      const findings: readonly FindingCode[] = ['eggs', 'queen-laying', 'virgin', 'several-eggs', 'no-brood'];
      return [{ code: 'help-queenless', kind: 'do', span: soon, lastUseful, fallbacks: NO_QUEEN, findings }];
    }
    case 'laying-workers':
      return [
        {
          code: 'end-laying-workers',
          kind: 'do',
          span: soon,
          fallbacks: ['shake-out', 'join'],
          findings: ['done'],
        },
      ];
    case 'drone-layer':
      return [
        {
          code: 'replace-drone-layer',
          kind: 'do',
          span: soon,
          fallbacks: ['find-and-remove-her', 'give-queen', 'give-young-brood', 'join'],
          findings: ['done', 'worker-brood'],
        },
      ];
    default: {
      const unclear = contradictions.length > 0 && scenarios.length > 1 && !found;
      const overlooked = scenarios[0]!.code === 'queen-overlooked' && !found;
      const findings: readonly FindingCode[] = ['old-queen', 'new-queen', 'virgin', 'eggs', 'no-eggs'];
      return unclear || overlooked ? [{ code: 'look-for-queen', kind: 'look', span: soon, findings }] : [];
    }
  }
}
