import { signal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Entry } from '../../../src/journal/entry.ts';
import type { Altered, Journal } from '../../../src/journal/journal.ts';
import { extendProjection, type Projection, startProjection } from '../../../src/registry/project.ts';
import type { Store, UnionPreview } from '../../../src/store/contract.ts';
import { useStore } from '../../app/store-context.ts';

const kept = new WeakMap<Journal, Projection>();

/** The journal with its registry, as the reading of tables and unions wants it; once for each state of the journal. */
export function projectionOf(journal: Journal): Projection {
  const known = kept.get(journal);
  if (known) return known;
  const made = startProjection(journal);
  kept.set(journal, made);
  return made;
}

/** What taking in a file of records would do. */
export interface PreviewedUnion {
  readonly preview: UnionPreview;
  /** The entries that go in: all but those altered under a known id. */
  readonly entries: readonly Entry[];
  readonly altered: readonly Altered[];
  /** A store as it would be afterwards, to look at: it names queens and boxes that are still to come. */
  readonly after: Store;
}

/**
 * Looks at the union with the open records before it is written. An entry whose contents differ under one id was
 * changed by hand or damaged, for entries never change: it stays out, and ours stands.
 */
export function useUnion(entries: readonly Entry[]): PreviewedUnion {
  const store = useStore();
  const journal = store.journal.value;
  return useMemo(() => {
    const whole = store.previewUnion(entries);
    const { altered } = whole;
    const changed = new Set(altered.map(({ id }) => id));
    const sound = changed.size === 0 ? entries : entries.filter(({ id }) => !changed.has(id));
    const after = extendProjection(projectionOf(journal), sound);
    return {
      preview: sound === entries ? whole : store.previewUnion(sound),
      entries: sound,
      altered,
      after: { ...store, journal: signal(after.journal), registry: signal(after.registry) },
    };
  }, [journal, entries]);
}
