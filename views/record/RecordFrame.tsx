import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { Draft } from '../../src/journal/entry.ts';
import type { Colony } from '../../src/registry/state.ts';
import { go, type RecordKind, routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { SavingNotices } from '../parts/SavingNotices.tsx';
import { useSaving } from '../parts/use-saving.ts';
import styles from './RecordFrame.module.css';
import { nextColony } from './walk.ts';

export interface RecordFrameProps {
  readonly colony: Colony;
  readonly kind: RecordKind;
  /** What the undo strip will say. */
  readonly title: string;
  /** What would be written now; nothing while something is missing, which `missing` then says. */
  readonly drafts: readonly Draft[] | undefined;
  readonly missing?: string | undefined;
  readonly onSaved?: () => void;
  readonly children: ComponentChildren;
}

/** A form at the hive: its fields, what stands against saving, and the two ways to save under the thumb. */
export function RecordFrame({ colony, kind, title, drafts, missing, onSaved, children }: RecordFrameProps) {
  const store = useStore();
  const saving = useSaving(JSON.stringify(drafts));
  const notices = useRef<HTMLDivElement>(null);
  const next = nextColony(store.registry.value, colony, store.on.value);
  const save = async (then: string) => {
    if (!drafts) return;
    if (await saving.save(drafts, title)) {
      onSaved?.();
      go(then);
    } else {
      notices.current?.scrollIntoView({ block: 'center' });
    }
  };
  const onSubmit = (event: Event) => {
    event.preventDefault();
    void save(routes.colony(colony.id));
  };
  return (
    <form class={styles.form} onSubmit={onSubmit} noValidate>
      <div class={styles.fields}>{children}</div>
      <div ref={notices}>
        <SavingNotices saving={saving} />
      </div>
      <div class={styles.foot}>
        {!drafts && missing && <p class={styles.missing}>{missing}</p>}
        <Button type="submit" look="main" size="hive" wide disabled={!drafts || saving.busy}>
          Save
        </Button>
        {next && (
          <Button
            size="hive"
            wide
            disabled={!drafts || saving.busy}
            onPress={() => save(routes.record(next.id, kind))}
          >
            Save, next: {next.label}
          </Button>
        )}
      </div>
    </form>
  );
}
