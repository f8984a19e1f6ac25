import type { ColonyId, YardId } from '../../src/journal/ids.ts';
import { headOn, labelOn, queenTitle } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { Button } from '../parts/Button.tsx';
import { SelectField } from '../parts/SelectField.tsx';
import { COMPASS } from '../parts/words.ts';
import styles from './BoxFields.module.css';
import { otherColonies, type PlanBox, type PlanPart, type SplitPlan, turnEntrance } from './plan.ts';

export interface BoxFieldsProps {
  readonly plan: SplitPlan;
  readonly part: PlanPart;
  readonly registry: Registry;
  readonly onPart: (part: PlanPart) => void;
}

/** Which box the part is in, and how it stands: its label, yard, roof and entrance. */
export function BoxFields({ plan, part, registry, onPart }: BoxFieldsProps) {
  const { box } = part;
  const set = (next: PlanBox) => onPart({ ...part, box: next });
  const colonies = otherColonies(registry, plan);
  const chooseBox = (id: ColonyId | undefined) => {
    if (id) set({ is: 'existing', colony: id });
    else if (box.is === 'existing') onPart({ ...part, box: newBox(part, plan, registry) });
  };
  return (
    <div class={styles.fields}>
      <SelectField
        label="The box"
        value={box.is === 'existing' ? box.colony : undefined}
        none="A new colony"
        options={colonies.map((colony) => {
          const head = headOn(registry, colony, plan.day);
          return {
            value: colony.id,
            label: `${labelOn(colony, plan.day)}, ${head ? `has ${queenTitle(head)}` : 'no queen known'}`,
          };
        })}
        onChange={chooseBox}
      />
      {box.is === 'new' && (
        <>
          <SelectField
            label="Yard"
            value={box.yard}
            options={[...registry.yards.values()].map((yard) => ({ value: yard.id, label: yard.name }))}
            onChange={(yard) => yard && set({ ...box, yard: yard as YardId })}
          />
          <Standing box={box} source={plan.source} onChange={set} />
        </>
      )}
    </div>
  );
}

type NewBox = Extract<PlanBox, { is: 'new' }>;

function Standing({
  box,
  source,
  onChange,
}: {
  readonly box: NewBox;
  readonly source: ColonyId;
  readonly onChange: (box: NewBox) => void;
}) {
  const { underRoofWith, entrance, ...rest } = box.place;
  const under = underRoofWith === source;
  const place = (roof: boolean, looks: typeof entrance) => ({
    ...rest,
    ...(roof ? { underRoofWith: source } : {}),
    ...(looks ? { entrance: looks } : {}),
  });
  return (
    <div class={styles.standing}>
      <label class={styles.check}>
        <input
          type="checkbox"
          checked={under}
          onChange={() => onChange({ ...box, place: place(!under, entrance) })}
        />
        Divided box: under one roof with the source
      </label>
      <Button onPress={() => onChange({ ...box, place: place(under, turnEntrance(entrance)) })}>
        {entrance ? `Entrance looks ${COMPASS[entrance]}` : 'Entrance: turn to say'}
      </Button>
    </div>
  );
}

function newBox(part: PlanPart, plan: SplitPlan, registry: Registry): NewBox {
  const source = registry.colonies.get(plan.source);
  const yard = source?.stays.at(-1)?.yard;
  if (!yard) throw new Error('A colony without a stay cannot be split.');
  // The key of a part is an id made for it, free for its colony once the box it was in is another's.
  return { is: 'new', colony: part.key as ColonyId, label: '', yard, place: {} };
}
