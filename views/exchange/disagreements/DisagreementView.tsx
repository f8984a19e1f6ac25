import type { ComponentChildren } from 'preact';
import { dayText } from '../../../src/journal/day-words.ts';
import { type Entry, kindTitle } from '../../../src/journal/entry.ts';
import { fieldsOf } from '../../../src/journal/fields.ts';
import type { Disagreement } from '../../../src/journal/journal.ts';
import { useStore } from '../../app/store-context.ts';
import { EntrySentence } from '../../parts/entries/EntrySentence.tsx';
import { list } from '../../parts/words.ts';
import { SubjectLabel } from '../in/SubjectLabel.tsx';
import styles from './Disagreements.module.css';
import { differingFields, versionsOf } from './settle.ts';
import { useWriter, VersionColumns } from './VersionColumns.tsx';

export interface DisagreementViewProps {
  readonly disagreement: Disagreement;
  /** What can be done with a version. */
  readonly act?: (version: Entry) => ComponentChildren;
}

/** One entry that stands in several versions: what was written first, the versions, which one counts and why. */
export function DisagreementView({ disagreement, act }: DisagreementViewProps) {
  const { journal } = useStore();
  const writer = useWriter();
  const { about, counts } = disagreement;
  const first = journal.value.get(about);
  const versions = versionsOf(disagreement);
  const fields = fieldsOf(counts.kind);
  const differing = differingFields(versions).map(
    (name) => labelOf(fields.find((field) => field.name === name)?.label) ?? name,
  );
  return (
    <div class={styles.disagreement}>
      <h3>
        {kindTitle(counts.kind)} <SubjectLabel entry={counts} /> {dayText(first?.day ?? counts.day)}
      </h3>
      {first && first.id !== counts.id && (
        <p class={styles.first}>
          First written: <EntrySentence entry={first} />
        </p>
      )}
      {differing.length > 0 && <p>The versions differ in {list(differing)}.</p>}
      <VersionColumns
        versions={versions.map((version) => ({
          entry: version,
          says: writer(version),
          counts: version.id === counts.id,
          stands: version.id === counts.id ? 'Counts now: written last' : undefined,
          act: act?.(version),
        }))}
      />
    </div>
  );
}

/** "gentle" of "Gentle, 1 to 4". */
function labelOf(label: string | undefined): string | undefined {
  return label?.split(',')[0]?.toLowerCase();
}
