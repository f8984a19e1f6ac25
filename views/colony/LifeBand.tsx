import { useState } from 'preact/hooks';
import { dayNumber, firstDay } from '../../src/journal/day.ts';
import type { Colony } from '../../src/registry/state.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { ChoiceRow } from '../parts/ChoiceRow.tsx';
import { useWidth } from '../parts/use-width.ts';
import { EventLane, letterKey } from './EventLane.tsx';
import styles from './LifeBand.module.css';
import { type LifeSpan, lifeScale, ticks, winters } from './life-scale.ts';
import { MiteLane } from './MiteLane.tsx';
import { StrengthLane } from './StrengthLane.tsx';
import { TenureLane } from './TenureLane.tsx';

const SPANS = [
  { value: 'season', label: 'Last 13 months' },
  { value: 'all', label: 'Whole life' },
] as const;

/** Pixels a year needs before the whole life is shown at once. */
const READABLE_YEAR = 150;
/** A life shorter than this is told by the list of what happened; drawn, its days lie on one another. */
const SHORTEST_YEARS = 30 / 365;
const HEIGHT = { tenures: 62, events: 40, strength: 86, mites: 96, axis: 22 } as const;

/** The life of a colony on one axis of time: who headed it, what happened, how strong it was, its mites. */
export function LifeBand({ colony }: { readonly colony: Colony }) {
  const registry = useRegistry();
  const store = useStore();
  const on = store.on.value;
  const { box, width } = useWidth();
  const years = (dayNumber(on) - dayNumber(firstDay(colony.started))) / 365;
  const [chosen, setChosen] = useState<LifeSpan>();
  const span = chosen ?? (width / Math.max(0.5, years) > READABLE_YEAR ? 'all' : 'season');
  const scale = lifeScale(colony, on, width, span);
  const hasMites = colony.entries.some(({ kind }) => kind === 'mite-count' || kind === 'treatment');
  const lanes = ['tenures', 'events', 'strength', ...(hasMites ? (['mites'] as const) : [])] as const;
  const tops = new Map<string, number>();
  let height = 0;
  for (const lane of lanes) {
    tops.set(lane, height);
    height += HEIGHT[lane as keyof typeof HEIGHT];
  }
  const top = (lane: string) => tops.get(lane) ?? 0;
  const lane = { colony, registry, on, scale };
  if (years < SHORTEST_YEARS) return null;
  const letters = letterKey(colony.entries);
  return (
    <section class={styles.band} aria-labelledby="life">
      <div class={styles.head}>
        <h2 id="life">Its life</h2>
        {years > 1.2 && (
          <ChoiceRow
            label="Time shown"
            hideLabel
            size="quiet"
            required
            options={SPANS}
            value={span}
            onChange={setChosen}
          />
        )}
      </div>
      <div ref={box} class={styles.box}>
        {width > 0 && (
          <svg width={width} height={height + HEIGHT.axis}>
            <title>Who headed this colony when; the same stands in words below</title>
            {winters(scale).map(({ from, to }) => (
              <rect key={from} class={styles.winter} x={from} y="0" width={to - from} height={height} />
            ))}
            <TenureLane {...lane} top={top('tenures')} height={HEIGHT.tenures} />
            <EventLane {...lane} top={top('events')} height={HEIGHT.events} />
            <StrengthLane {...lane} top={top('strength')} height={HEIGHT.strength} />
            {hasMites && (
              <MiteLane
                {...lane}
                top={top('mites')}
                height={HEIGHT.mites}
                thresholds={store.settings.value.miteThresholds}
              />
            )}
            <line class={styles.axis} x1="0" x2={width} y1={height} y2={height} />
            {ticks(scale).map(({ at, label, year }) => (
              <g key={at} transform={`translate(${at} ${height})`}>
                <line class={styles.axis} y2={year ? 8 : 5} />
                <text class={year ? styles.year : styles.month} x="3" y="17">
                  {label}
                </text>
              </g>
            ))}
          </svg>
        )}
      </div>
      <p class={styles.key}>
        Shaded: winter, December to February. Broken line: a queen expected. {letters && `${letters}; short`}
        {!letters && 'Short'} strokes: opened or written of.
      </p>
    </section>
  );
}
