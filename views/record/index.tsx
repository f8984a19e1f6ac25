import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import type { ColonyId } from '../../src/journal/ids.ts';
import { isLiving } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { type RecordKind, routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { EndedWords } from '../parts/EndedWords.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { InspectionForm } from './inspection/InspectionForm.tsx';
import { KindStrip } from './KindStrip.tsx';
import { MiteForm } from './mites/MiteForm.tsx';
import { OtherKinds } from './OtherKinds.tsx';
import { QueenForm } from './queen/QueenForm.tsx';
import styles from './Record.module.css';
import { RecordHead } from './RecordHead.tsx';
import { FeedingForm } from './small/FeedingForm.tsx';
import { HarvestForm } from './small/HarvestForm.tsx';
import { HygienicForm } from './small/HygienicForm.tsx';
import { NoteForm } from './small/NoteForm.tsx';
import { TreatmentForm } from './treatment/TreatmentForm.tsx';
import { WhereToRecord } from './WhereToRecord.tsx';
import { WinterForm } from './winter/WinterForm.tsx';

export interface RecordFormProps {
  readonly colony: Colony;
}

const FORMS: Readonly<Record<RecordKind, ComponentType<RecordFormProps>>> = {
  inspection: InspectionForm,
  mites: MiteForm,
  treatment: TreatmentForm,
  queen: QueenForm,
  winter: WinterForm,
  feeding: FeedingForm,
  harvest: HarvestForm,
  hygienic: HygienicForm,
  note: NoteForm,
  other: OtherKinds,
};

/** Recording at one hive: the colony, what is recorded, and the form for it. Without a colony, which one. */
export function Record({ id, kind = 'inspection' }: { readonly id?: string; readonly kind?: string }) {
  const store = useStore();
  const colony = store.registry.value.colonies.get(id as ColonyId);
  useEffect(() => {
    if (colony) void store.changeSettings({ lastPlace: colony.id });
  }, [colony?.id]);
  if (!id) return <WhereToRecord />;
  if (!colony || !(kind in FORMS)) {
    return (
      <PageHeader
        title="Nothing to record here"
        lead="This colony is not in the open records, or the link is an old one."
        actions={<Button href={routes.recordWhere()}>Choose a colony</Button>}
      />
    );
  }
  const chosen = kind as RecordKind;
  const Form = FORMS[chosen];
  return (
    <>
      <RecordHead colony={colony} kind={chosen} />
      <KindStrip colony={colony} kind={chosen} />
      {colony.ended && !isLiving(colony, store.on.value) && (
        <p class={styles.ended}>
          <EndedWords colony={colony} />
          What you record here belongs to a day before.
        </p>
      )}
      <Form key={`${colony.id} ${chosen}`} colony={colony} />
    </>
  );
}
