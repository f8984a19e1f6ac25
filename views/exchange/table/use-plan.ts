import { useMemo } from 'preact/hooks';
import { type IntakePlan, planIntake, type Table } from '../../../src/exchange/intake/index.ts';
import { useStore } from '../../app/store-context.ts';
import { projectionOf } from '../in/union.ts';
import type { TableWork } from '../incoming.ts';
import { useToday } from '../use-today.ts';

/** What the table would write as the keeper reads it now; planned anew when an answer or a column changes. */
export function usePlan(table: Table, { mapping, answers, leaveOut }: TableWork): IntakePlan {
  const store = useStore();
  const today = useToday();
  const journal = store.journal.value;
  return useMemo(
    () => planIntake(table, mapping, projectionOf(journal), { today, newId: store.newId, answers, leaveOut }),
    [table, mapping, answers, leaveOut, journal, today],
  );
}
