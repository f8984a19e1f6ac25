import { dayText } from '../../src/journal/day-words.ts';
import type { EntryOf } from '../../src/journal/entry.ts';
import type { Settings } from '../../src/store/settings.ts';
import { lowestThreshold } from '../mites/counts.ts';
import { figureWords, miteFigure } from '../parts/entries/mite-words.ts';
import type { LaneProps } from './lane.ts';
import styles from './MiteLane.module.css';

/** Percent of the bees at the top of the lane, at least. */
const LEAST_TOP = 4;

export interface MiteLaneProps extends LaneProps {
  readonly thresholds: Settings['miteThresholds'];
}

/** Washes and shakes in percent of bees with their limits, the keeper's threshold, and the treatments over time. */
export function MiteLane({ colony, registry, on, scale, top, height, thresholds }: MiteLaneProps) {
  const counts = colony.entries
    .filter((entry): entry is EntryOf<'mite-count'> => entry.kind === 'mite-count')
    .map((entry) => ({
      entry,
      figure: miteFigure(entry.sample),
      threshold: lowestThreshold(thresholds, entry),
    }))
    .filter(({ figure }) => figure.unit === '%');
  const most = Math.max(LEAST_TOP, ...counts.map(({ figure }) => figure.high));
  const base = top + height - 1;
  const y = (percent: number) => base - ((height - 44) * Math.min(percent, most)) / most;
  const treatments = [...registry.treatments.values()].filter((span) => span.colonies.includes(colony.id));
  let labelled = Number.NEGATIVE_INFINITY;
  return (
    <g>
      <text class={styles.title} x="0" y={top + 12}>
        Mites, % of bees, with limits; treatments
      </text>
      {treatments.map((span) => {
        const start = scale.x(span.from);
        const end = Math.max(start + 3, scale.x(span.to ?? on));
        if (end < 0) return null;
        const room = start - labelled > 90;
        if (room) labelled = start;
        return (
          <g key={span.id}>
            <title>{`${span.entry.active}, from ${dayText(span.from)}${span.to ? ` to ${dayText(span.to)}` : ''}`}</title>
            <rect class={styles.treatment} x={start} y={top + 30} width={end - start} height={height - 31} />
            {room && (
              <text class={styles.active} x={Math.max(0, start)} y={top + 27}>
                {span.entry.active}
              </text>
            )}
          </g>
        );
      })}
      {counts.map(({ entry, figure, threshold }) => {
        const x = scale.x(entry.day);
        if (x < 0) return null;
        return (
          <g key={entry.id}>
            <title>{`${dayText(entry.day)}: ${figureWords(figure)}`}</title>
            <line class={styles.limits} x1={x} x2={x} y1={y(figure.low)} y2={y(figure.high)} />
            {figure.value > 0 && <circle class={styles.dot} cx={x} cy={y(figure.value)} r="3.5" />}
            {threshold && <path class={styles.threshold} d={`M${x - 14} ${y(threshold.value)}h28`} />}
          </g>
        );
      })}
    </g>
  );
}
