import type { GroupShare } from '../../graph/merit/survival/group-survival.ts';
import { IntervalBar } from '../parts/IntervalBar.tsx';

export interface YardShareProps {
  readonly share: GroupShare<string>;
  /** Share (0..1) of all yards, which this one is drawn towards. */
  readonly towards: number;
}

/** How many of a yard's colony-winters ended well, and the share drawn towards that of all yards. */
export function YardShare({ share: { survived, started, drawn }, towards }: YardShareProps) {
  return (
    <>
      <p>
        {survived} of {started} colony-winters came through.
      </p>
      <IntervalBar
        label="Drawn towards all yards"
        value={100 * drawn.mean}
        low={100 * drawn.low}
        high={100 * drawn.high}
        max={100}
        digits={0}
        unit="%"
        threshold={{ value: Math.round(100 * towards), label: 'Share of all yards' }}
      />
    </>
  );
}
