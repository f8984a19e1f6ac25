import { useMemo, useState } from 'preact/hooks';
import { labelOn } from '../../../src/registry/queries.ts';
import type { Colony } from '../../../src/registry/state.ts';
import { goInstead, routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { KeptNotice } from '../../parts/KeptNotice.tsx';
import { PageHeader } from '../../parts/PageHeader.tsx';
import type { SplitPlan } from '../plan.ts';
import { Boxes } from './Boxes.tsx';
import { CombFillings, CombKey } from './Comb.tsx';
import { type Deal, partsOf, propose } from './deal.ts';
import { FrameEditor } from './FrameEditor.tsx';
import styles from './Planner.module.css';
import { Proposal } from './Proposal.tsx';
import { combFrames, correctFrame, frameSizes, hasContent, type Sketch } from './sketch.ts';
import { toBench } from './to-bench.ts';
import { useSketch } from './use-sketch.ts';
import { WishFields } from './WishFields.tsx';
import { basisWords } from './words.ts';

export interface PlannerProps {
  readonly source: Colony;
  /** Lays the plan on the bench. */
  readonly onBench: (plan: SplitPlan) => void;
}

/** A split planned before the hive is opened: the frames as they are taken to be, a partition, and what becomes of it. */
export function Planner({ source, onBench }: PlannerProps) {
  const store = useStore();
  const on = store.on.value;
  const { sketch, set, forget, leftAt, basis } = useSketch(source, on);
  const sizes = frameSizes(store.settings.value.frameSizes);
  const frames = useMemo(() => combFrames(sketch, sizes), [sketch.boxes, sizes.length]);
  const [deal, setDeal] = useState<Deal>();
  const [busy, setBusy] = useState(false);
  const change = (next: Sketch) => {
    set(next);
    setDeal(undefined);
  };
  const work = () => {
    setBusy(true);
    // The search takes a moment; the words on the button change before it begins.
    setTimeout(() => {
      setDeal(propose(frames, sketch.wish));
      setBusy(false);
    }, 30);
  };
  const lay = () => {
    if (!deal) return;
    const input = { registry: store.registry.value, source, day: on, newId: store.newId };
    onBench(toBench(partsOf(deal, frames), input));
    goInstead(routes.split(source.id));
  };
  const label = labelOn(source, on);
  return (
    <article class={styles.page}>
      <CombFillings />
      <PageHeader
        title={`Plan a split of ${label}`}
        above={{ label: `Split ${label}`, href: routes.split(source.id) }}
        lead={basisWords(basis, on)}
      />
      {leftAt && <KeptNotice leftAt={leftAt} onFresh={forget} />}
      <Hive sketch={sketch} onChange={change} />
      <WishFields wish={sketch.wish} onChange={(wish) => change({ ...sketch, wish })} />
      {deal ? (
        <Proposal
          deal={deal}
          sketch={sketch}
          frames={frames}
          source={label}
          storesKnown={basis.stores !== undefined || frames.some(({ stores }) => stores > 0)}
          onDeal={setDeal}
          onLay={lay}
        />
      ) : (
        <div class={styles.work}>
          <Button look="main" size="hive" disabled={busy || !hasContent(sketch)} onPress={work}>
            {busy ? 'Working it out' : 'Propose the parts'}
          </Button>
          {!hasContent(sketch) && <p>Say on which frames there are bees and brood first.</p>}
        </div>
      )}
    </article>
  );
}

/** The frames of the hive, and the one being corrected. */
function Hive({
  sketch,
  onChange,
}: {
  readonly sketch: Sketch;
  readonly onChange: (sketch: Sketch) => void;
}) {
  const store = useStore();
  const [chosen, setChosen] = useState<string>();
  const all = sketch.boxes.flatMap(({ frames }) => frames.map((frame, at) => ({ frame, place: at + 1 })));
  const at = all.findIndex(({ frame }) => frame.id === chosen);
  const picked = all[at];
  const next = all[at + 1];
  return (
    <section class={styles.hive} aria-labelledby="frames">
      <h2 id="frames">Its frames</h2>
      <Boxes
        boxes={sketch.boxes}
        sizes={frameSizes(store.settings.value.frameSizes)}
        chosen={chosen}
        onChoose={setChosen}
        onBoxes={(boxes) => onChange({ ...sketch, boxes })}
        newKey={store.newId}
      />
      {picked ? (
        <FrameEditor
          frame={picked.frame}
          place={picked.place}
          onChange={(change) => onChange(correctFrame(sketch, picked.frame.id, change))}
          onNext={next && (() => setChosen(next.frame.id))}
        />
      ) : (
        <CombKey />
      )}
    </section>
  );
}
