import { useState } from 'preact/hooks';
import { groupBy } from '../../graph/grouping.ts';
import { WEARING_OFF_DAYS } from '../../graph/merit/traits/after-treatment.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import styles from './CountList.module.css';
import { CountRow } from './CountRow.tsx';
import type { CountSaid } from './counts.ts';
import { scaleEnd, scaleTicks } from './scale.ts';
import { highestFirst, type Surveyed } from './survey.ts';

type Counted = Surveyed & { readonly last: CountSaid };

const ORDERS = [
  { value: 'highest', label: 'Highest first' },
  { value: 'yards', label: 'Yard by yard' },
] as const;

type Order = (typeof ORDERS)[number]['value'];

/** The last counts of all colonies under one another on one scale, with a key that says what the marks are. */
export function CountList({ counted }: { readonly counted: readonly Counted[] }) {
  const [order, setOrder] = useState<Order>('highest');
  const units = (['%', 'a day'] as const).flatMap((unit) => {
    const of = counted.filter(({ last }) => last.figure.unit === unit);
    return of.length === 0 ? [] : [{ unit, of }];
  });
  return (
    <section class={styles.list} aria-labelledby="last-counts">
      <div class={styles.head}>
        <h2 id="last-counts">The last count of each colony</h2>
        <ChoiceRow
          label="Order"
          hideLabel
          size="quiet"
          required
          options={ORDERS}
          value={order}
          onChange={(next) => next && setOrder(next)}
        />
      </div>
      {units.map(({ unit, of }) => (
        <Scaled key={unit} unit={unit} counted={of} order={order} />
      ))}
      <p class={styles.key}>
        Bar: what the count allows, 95 times of 100; mites sit in clumps, so read it as the narrowest that can
        be claimed. Stroke: what was found. Broken line: your threshold. Hollow: counted under a treatment or
        less than {WEARING_OFF_DAYS} days (two rounds of brood, our assumption) after it: no evidence that the
        bees hold mites by themselves.
      </p>
    </section>
  );
}

interface ScaledProps {
  readonly unit: '%' | 'a day';
  readonly counted: readonly Counted[];
  readonly order: Order;
}

function Scaled({ unit, counted, order }: ScaledProps) {
  const most = scaleEnd(
    counted.map(({ last }) => last),
    unit,
  );
  const groups = order === 'highest' ? [highestFirst(counted)] : byYard(counted);
  return (
    <div>
      <div class={styles.axis} aria-hidden="true">
        <span class={styles.unit}>{unit === '%' ? 'Mites, % of bees' : 'Mites fallen a day'}</span>
        <div class={styles.ticks}>
          {scaleTicks(most).map((tick) => (
            <span key={tick} style={{ left: `${(100 * tick) / most}%` }}>
              {tick}
            </span>
          ))}
        </div>
      </div>
      {groups.map((group) => (
        <div key={group[0]?.yard.id}>
          {order === 'yards' && <h3 class={styles.yard}>{group[0]?.yard.name}</h3>}
          <ol>
            {group.map((each) => (
              <CountRow key={each.colony.id} surveyed={each} most={most} />
            ))}
          </ol>
        </div>
      ))}
    </div>
  );
}

function byYard(counted: readonly Counted[]): readonly (readonly Counted[])[] {
  return [...groupBy(counted, ({ yard }) => yard.id).values()];
}
