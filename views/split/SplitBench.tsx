import { useEffect, useState } from 'preact/hooks';
import { localDay, RoughDay } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { labelOn, tenureOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { go, routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { DayInput } from '../parts/DayInput.tsx';
import { KeptNotice } from '../parts/KeptNotice.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { SavingNotices } from '../parts/SavingNotices.tsx';
import { useKept } from '../parts/use-kept.ts';
import { useSaving } from '../parts/use-saving.ts';
import { missingInPlan, splitDrafts } from './drafts.ts';
import { HandBar } from './HandBar.tsx';
import { Palette } from './Palette.tsx';
import { PartBox } from './PartBox.tsx';
import {
  addPart,
  changePart,
  type Hand,
  type PlanPart,
  removePart,
  SOURCE,
  type SplitPlan,
  setDown,
  startPlan,
  takenUp,
} from './plan.ts';
import styles from './Split.module.css';

export interface SplitBenchProps {
  readonly source: Colony;
  /** Laid out beforehand in the planner. */
  readonly planned?: SplitPlan | undefined;
}

/** The bench on which a split is laid out, checked and written down. */
export function SplitBench({ source, planned }: SplitBenchProps) {
  const store = useStore();
  const registry = store.registry.value;
  const [start] = useState(() => startPlan(registry, source, store.on.peek(), store.newId));
  const kept = useKept(`split ${source.id}`, start, planned);
  const { value: plan, set: setPlan } = kept;
  const left = kept.leftAt && localDay(kept.leftAt);
  const [today] = useState(() => store.on.peek());
  useEffect(() => {
    if (left) setPlan((now) => takenUp(now, left, today));
  }, []);
  const [hand, setHand] = useState<Hand | undefined>();
  const saving = useSaving(plan);
  useEscape(() => setHand(undefined));

  const label = labelOn(source, plan.day);
  const missing = missingInPlan(plan, registry);
  const put = (held: Hand, key: string) => {
    setPlan((now) => setDown(now, held, key));
    if (held.holds === 'queen' || held.from !== undefined) setHand(undefined);
  };
  const save = async () => {
    const saved = await saving.save(splitDrafts(plan, registry), `Split of ${label}`);
    if (!saved) return;
    kept.forget();
    go(routes.colony(source.id));
  };
  const boxOf = (part: PlanPart) => (
    <PartBox
      key={part.key}
      plan={plan}
      part={part}
      registry={registry}
      title={titleOf(part, plan, registry.colonies, label)}
      hand={hand}
      onHand={setHand}
      onSetDown={put}
      onPart={(next) => setPlan((now) => changePart(now, part.key, () => next))}
      onRemove={() => setPlan((now) => removePart(now, part.key))}
    />
  );
  const [stays, ...others] = plan.parts;
  return (
    <article class={styles.page}>
      <PageHeader
        title={`Split ${label}`}
        above={{ label, href: routes.colony(source.id) }}
        actions={
          tenureOn(source, plan.day) && <Button href={routes.planSplit(source.id)}>Plan it first</Button>
        }
        lead={leadWords(planned !== undefined, tenureOn(source, plan.day) !== undefined)}
      />
      {kept.leftAt && <KeptNotice leftAt={kept.leftAt} onFresh={kept.forget} />}
      {left && left < plan.day && <p>Laid out beforehand. If the split was made before today, say when.</p>}
      <DayInput
        label="Day of the split"
        value={plan.day}
        onChange={(day) => {
          const exact = RoughDay.safeParse(day);
          if (exact.success && day.length === 10)
            setPlan((now) => ({ ...now, day: day as string as SplitPlan['day'] }));
        }}
      />
      <div class={styles.yard}>
        <div class={styles.middle}>
          {stays && boxOf(stays)}
          <Palette source={label} hand={hand} onHand={setHand} onDrop={put} />
        </div>
        {others.map((part) => (
          <div key={part.key}>{boxOf(part)}</div>
        ))}
        <div class={styles.add}>
          <Button onPress={() => setPlan((now) => addPart(now, registry, store.newId))}>Add a part</Button>
        </div>
      </div>
      <SavingNotices saving={saving} />
      <p class={styles.caution}>
        Before you open: smoke ready, veil on, nobody allergic without help near by. Frames of brood carry
        disease with them; take none from a colony you are not sure of, and ask the bee inspector when brood
        looks ill.
      </p>
      <div class={styles.finish}>
        {missing.length > 0 && <p>{missing.join(' ')}</p>}
        <Button look="main" size="hive" wide disabled={missing.length > 0 || saving.busy} onPress={save}>
          Write the split down
        </Button>
      </div>
      <HandBar hand={hand} onPutBack={() => setHand(undefined)} />
    </article>
  );
}

function leadWords(planned: boolean, headed: boolean): string {
  if (planned) return 'As planned; nothing is written yet. Lift a frame or the queen to change it.';
  return headed
    ? 'Lift a frame or the queen, set it down in a box. Each box says what it then is.'
    : 'Nobody known heads this colony. Its parts can be given cells, eggs or a queen.';
}

function titleOf(
  part: PlanPart,
  plan: SplitPlan,
  colonies: ReadonlyMap<ColonyId, Colony>,
  source: string,
): string {
  if (part.key === SOURCE) return `${source} stays`;
  if (part.box.is === 'new') return part.box.label.trim() ? `New box ${part.box.label}` : 'New box';
  const colony = colonies.get(part.box.colony);
  return colony ? labelOn(colony, plan.day) : 'Another colony';
}

function useEscape(onEscape: () => void): void {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => event.key === 'Escape' && onEscape();
    window.addEventListener('keydown', listen);
    return () => window.removeEventListener('keydown', listen);
  }, [onEscape]);
}
