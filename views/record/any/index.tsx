import type { EntryKind } from '../../../src/journal/entry.ts';
import { kindTitle } from '../../../src/journal/entry.ts';
import { ENTRY_KINDS } from '../../../src/journal/fields.ts';
import type { ColonyId } from '../../../src/journal/ids.ts';
import { useSearchValue } from '../../app/location.ts';
import { go, routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { PageHeader } from '../../parts/PageHeader.tsx';
import { OtherKinds } from '../OtherKinds.tsx';
import { AnyForm } from './AnyForm.tsx';
import { firstValues } from './values.ts';

/** Any kind of entry, by its schema: the last resort where no form of its own asks for it. */
export function RecordAny({ kind }: { readonly kind?: string }) {
  const store = useStore();
  const colony = useSearchValue('colony');
  const queen = useSearchValue('queen');
  const known = ENTRY_KINDS.find((each) => each === kind);
  if (!known) {
    return (
      <>
        <PageHeader title="Record anything" lead="Every kind of entry there is." />
        <OtherKinds />
      </>
    );
  }
  const back = colony ? routes.colony(colony) : queen ? routes.queen(queen) : routes.yards();
  const label = colony && store.registry.value.colonies.get(colony as ColonyId)?.label;
  return (
    <>
      <PageHeader title={kindTitle(known)} above={{ label: label || 'Back', href: back }} />
      <AnyForm
        key={`${known} ${colony} ${queen}`}
        kind={known as EntryKind}
        initial={firstValues(known, {
          on: store.on.value,
          registry: store.registry.value,
          keeper: store.keeper.value.id,
          colony,
          queen,
        })}
        onSaved={() => go(back)}
      />
    </>
  );
}
