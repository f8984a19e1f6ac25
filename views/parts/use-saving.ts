import { useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../src/journal/entry.ts';
import type { Problem } from '../../src/journal/problems.ts';
import type { Contradiction } from '../../src/registry/state.ts';
import { useStore } from '../app/store-context.ts';

/** A form's saving: what stands against it, and the reasons with which the keeper overrules that. */
export interface Saving {
  readonly problems: readonly Problem[];
  readonly contradictions: readonly Contradiction[];
  readonly reasons: ReadonlyMap<string, string>;
  readonly overrule: (rule: string, reason: string) => void;
  readonly busy: boolean;
  /**
   * Checks the drafts against the journal and writes them as one action. False when something stands against it; the
   * form shows it with `SavingNotices` and may call again.
   */
  readonly save: (drafts: readonly Draft[], title: string) => Promise<boolean>;
}

/**
 * Saving for one form. `about` stands for what would be saved: once it changes, what stood against it before, and the
 * reasons given for that, no longer hold.
 */
export function useSaving(about?: unknown): Saving {
  const store = useStore();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [contradictions, setContradictions] = useState<readonly Contradiction[]>([]);
  const [reasons, setReasons] = useState<ReadonlyMap<string, string>>(new Map());
  const [busy, setBusy] = useState(false);
  useEffect(() => {
    setProblems([]);
    setContradictions([]);
    setReasons(new Map());
  }, [about]);

  const save = async (drafts: readonly Draft[], title: string) => {
    const reasoned = drafts.map((draft) => withReasons(draft, reasons));
    const against = store.check(reasoned).filter(({ overruled }) => overruled === undefined);
    setContradictions(against);
    setProblems([]);
    if (against.length > 0) return false;
    setBusy(true);
    const written = await store.write(reasoned, title);
    setBusy(false);
    if (!written.ok) setProblems(written.problems);
    return written.ok;
  };
  const overrule = (rule: string, reason: string) => setReasons(new Map(reasons).set(rule, reason));
  return { problems, contradictions, reasons, overrule, busy, save };
}

function withReasons(draft: Draft, reasons: ReadonlyMap<string, string>): Draft {
  const given = [...reasons]
    .filter(([, reason]) => reason.trim() !== '')
    .map(([rule, reason]) => ({ rule, reason: reason.trim() }));
  return given.length === 0 ? draft : { ...draft, overruled: [...(draft.overruled ?? []), ...given] };
}
