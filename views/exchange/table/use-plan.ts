import { useEffect, useState } from 'preact/hooks';
import { type IntakePlan, mendTable, planIntake, type Table } from '../../../src/exchange/intake/index.ts';
import { useStore } from '../../app/store-context.ts';
import { useToday } from '../../parts/use-today.ts';
import { projectionOf } from '../in/union.ts';
import type { TableWork } from '../incoming.ts';

/** A table as it stands now with what it would write. */
export interface ReadPlan {
  readonly table: Table;
  readonly plan: IntakePlan;
}

/**
 * What the table would write as the keeper reads it now; planned anew when an answer, a column or a cell changes. It is
 * planned after the screen has shown the change, since a table of thousands takes seconds; until then the last plan
 * stands, and at first there is none.
 */
export function usePlan(table: Table, work: TableWork): (ReadPlan & { readonly busy: boolean }) | undefined {
  const store = useStore();
  const today = useToday();
  const journal = store.journal.value;
  const [read, setRead] = useState<ReadPlan & { readonly of: TableWork }>();
  useEffect(() => {
    const { mapping, answers, leaveOut, mended } = work;
    const later = setTimeout(() => {
      const now = mendTable(table, mended);
      const options = { today, newId: store.newId, answers, leaveOut };
      setRead({ table: now, plan: planIntake(now, mapping, projectionOf(journal), options), of: work });
    });
    return () => clearTimeout(later);
  }, [table, work, journal, today]);
  return read && { ...read, busy: read.of !== work };
}
