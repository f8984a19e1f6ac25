import type { RoughDay } from '../../src/journal/day.ts';
import type { CellAge } from '../../src/journal/entries/increase.ts';
import { ownBroodIn } from '../../src/registry/own-brood.ts';
import { headOn, labelOn, queenTitle } from '../../src/registry/queries.ts';
import type { Colony, Registry } from '../../src/registry/state.ts';
import { Button } from '../parts/Button.tsx';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { FRAME_KINDS, FRAME_WORDS, type FrameKind } from '../split/plan.ts';
import { Swatch } from '../split/Swatch.tsx';
import { Token } from '../split/Token.tsx';
import { PART_ATTRIBUTE } from '../split/use-drag.ts';
import { type Delivery, type Load, layersOf, purposeOf } from './load.ts';
import styles from './Receiver.module.css';

export interface ReceiverProps {
  readonly load: Load;
  readonly colony: Colony;
  readonly delivery: Delivery | undefined;
  readonly registry: Registry;
  readonly inHand: FrameKind | undefined;
  readonly onFrame: (kind: FrameKind, by: number) => void;
  readonly onChange: (change: Partial<Delivery>) => void;
}

const AGES = [
  { value: 'open', label: 'Open' },
  { value: 'capped', label: 'Capped' },
  { value: 'emerging', label: 'Emerging' },
  { value: 'unknown', label: 'Not known' },
] as const satisfies readonly { value: CellAge; label: string }[];

/** A colony that frames are carried to, and what they will make of it. */
export function Receiver(props: ReceiverProps) {
  const { load, colony, delivery, registry, inHand, onFrame, onChange } = props;
  const head = headOn(registry, colony, load.day);
  return (
    <section
      class={`${styles.box} ${inHand ? styles.ready : ''}`}
      aria-label={labelOn(colony, load.day)}
      {...{ [PART_ATTRIBUTE]: colony.id }}
    >
      <header class={styles.head}>
        <h2>{labelOn(colony, load.day)}</h2>
        <p>
          {head
            ? `headed by ${queenTitle(head)}`
            : colony.expected.length > 0
              ? 'a queen expected'
              : 'no queen known'}
        </p>
      </header>
      {delivery && (
        <div class={styles.frames}>
          {FRAME_KINDS.map((kind) => {
            const count = delivery.frames[kind];
            return count ? (
              <Token
                key={kind}
                label={`Take a frame of ${FRAME_WORDS[kind]} back out`}
                inHand={false}
                onLift={() => onFrame(kind, -1)}
                onPutBack={() => undefined}
                onDrop={() => undefined}
              >
                <Swatch kind={kind} count={count} /> {count} × {FRAME_WORDS[kind]}
              </Token>
            ) : null;
          })}
        </div>
      )}
      {inHand && (
        <Button look="main" size="hive" wide onPress={() => onFrame(inHand, 1)}>
          Set down here
        </Button>
      )}
      {delivery && <Meaning load={load} delivery={delivery} registry={registry} onChange={onChange} />}
    </section>
  );
}

function Meaning({
  load,
  delivery,
  registry,
  onChange,
}: Pick<ReceiverProps, 'load' | 'registry' | 'onChange'> & { readonly delivery: Delivery }) {
  const purpose = purposeOf(registry, delivery, load.day);
  if (purpose === 'frames') {
    return (
      <label class={styles.check}>
        <input
          type="checkbox"
          checked={delivery.aboveExcluder ?? false}
          onChange={() => onChange({ aboveExcluder: !delivery.aboveExcluder })}
        />
        Hung above an excluder: it emerges into the box below
      </label>
    );
  }
  const { dams } = layersOf(registry, load, purpose);
  const colony = registry.colonies.get(delivery.colony);
  const beside =
    purpose === 'cells' && colony ? ownBroodIn(colony, load.day as string as RoughDay) : undefined;
  const own = beside && dams.every(({ queen }) => queen !== beside) ? registry.queens.get(beside) : undefined;
  const names = dams.flatMap(({ queen }) => {
    const record = registry.queens.get(queen);
    return record ? [queenTitle(record)] : [];
  });
  const whose = names.length > 0 ? names.join(' or ') : 'a queen not known';
  return (
    <>
      <p class={styles.story}>
        {purpose === 'cells' ? 'From these cells' : 'From these eggs'} comes a daughter of {whose}, wherever
        the frame hung.
      </p>
      {own && (
        <p class={styles.story}>
          {queenTitle(own)} headed this box within the last 8 days: a daughter of hers, from eggs or young
          larvae still here, may come first. The dam is written down as probable; say so on the queen’s page
          once you know.
        </p>
      )}
      {purpose === 'cells' && (
        <ChoiceRow
          label="Age of the cells"
          required
          value={delivery.cellAge}
          options={AGES}
          onChange={(cellAge) => cellAge && onChange({ cellAge })}
        />
      )}
    </>
  );
}
