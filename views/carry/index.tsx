import { useState } from 'preact/hooks';
import type { PlainDay } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { byLabel, isAlive, labelOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { useSearchValue } from '../app/location.ts';
import { go, routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { DayInput } from '../parts/DayInput.tsx';
import { EmptyState } from '../parts/EmptyState.tsx';
import { KeptNotice } from '../parts/KeptNotice.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { SavingNotices } from '../parts/SavingNotices.tsx';
import { useKept } from '../parts/use-kept.ts';
import { useSaving } from '../parts/use-saving.ts';
import { HandBar } from '../split/HandBar.tsx';
import { Palette } from '../split/Palette.tsx';
import { FRAME_KINDS, type FrameKind, type Hand } from '../split/plan.ts';
import styles from './Carry.module.css';
import { changeDelivery, deliver, type Load, loadDrafts, receivers } from './load.ts';
import { Receiver } from './Receiver.tsx';

/** Frames carried from one colony to others: cells, eggs, brood, stores. */
export function Carry({ id }: { readonly id?: string }) {
  const { registry, on } = useStore();
  const asked = useSearchValue('into');
  const kindAsked = useSearchValue('frame');
  const colony = registry.value.colonies.get(id as ColonyId);
  if (!colony || !isAlive(colony, on.value)) {
    return (
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        Frames are carried from a living colony. Choose it in its yard.
      </EmptyState>
    );
  }
  const into = registry.value.colonies.get(asked as ColonyId);
  const frame = FRAME_KINDS.find((kind) => kind === kindAsked);
  return <CarryBench key={colony.id} from={colony} {...(into && frame ? { laid: { into, frame } } : {})} />;
}

interface CarryBenchProps {
  readonly from: Colony;
  /** A frame that lies in its box when the page opens, since the way here named both. */
  readonly laid?: { readonly into: Colony; readonly frame: FrameKind };
}

function CarryBench({ from, laid }: CarryBenchProps) {
  const store = useStore();
  const registry = store.registry.value;
  const [start] = useState((): Load => {
    const empty: Load = { from: from.id, day: store.on.peek(), to: [] };
    return laid ? deliver(empty, laid.into.id, laid.frame, 1, store.newId) : empty;
  });
  const kept = useKept(`carry ${from.id} ${laid ? `${laid.frame} ${laid.into.id}` : ''}`, start);
  const { value: load, set: setLoad } = kept;
  const [hand, setHand] = useState<Hand | undefined>();
  const saving = useSaving(load);
  const alive = [...registry.colonies.values()].filter((colony) => isAlive(colony, load.day)).sort(byLabel);
  const inHand = hand?.holds === 'frame' ? hand.kind : undefined;
  const label = labelOn(from, load.day);

  const save = async () => {
    const saved = await saving.save(loadDrafts(load, registry), `Frames carried from ${label}`);
    if (!saved) return;
    kept.forget();
    go(routes.colony(laid?.into.id ?? from.id));
  };
  return (
    <article class={styles.page}>
      <PageHeader
        title={`Carry frames from ${label}`}
        above={{ label, href: routes.colony(from.id) }}
        lead="Take a frame, set it down in another box. Cells and eggs stay those of the queen who laid them."
      />
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      <DayInput
        label="Day"
        value={load.day}
        onChange={(day) =>
          day.length === 10 && setLoad((now) => ({ ...now, day: day as string as PlainDay }))
        }
      />
      <Palette
        source={label}
        hand={hand}
        onHand={setHand}
        onDrop={(held, key) =>
          held.holds === 'frame' && setLoad((now) => deliver(now, key as ColonyId, held.kind, 1, store.newId))
        }
      />
      <div class={styles.receivers}>
        {receivers(alive, from, laid?.into).map((colony) => (
          <Receiver
            key={colony.id}
            load={load}
            colony={colony}
            delivery={load.to.find((each) => each.colony === colony.id)}
            registry={registry}
            inHand={inHand}
            onFrame={(kind, by) => {
              setLoad((now) => deliver(now, colony.id, kind, by, store.newId));
              setHand(undefined);
            }}
            onChange={(change) => setLoad((now) => changeDelivery(now, colony.id, change))}
          />
        ))}
      </div>
      <SavingNotices saving={saving} />
      <p class={styles.caution}>
        Frames of brood carry disease with them. Take none from a colony you are not sure of; brood that looks
        ill is a matter for the bee inspector.
      </p>
      <div class={styles.finish}>
        {load.to.length === 0 && <p>Nothing is in another box yet.</p>}
        <Button look="main" size="hive" wide disabled={load.to.length === 0 || saving.busy} onPress={save}>
          Write it down
        </Button>
      </div>
      <HandBar hand={hand} onPutBack={() => setHand(undefined)} />
    </article>
  );
}
