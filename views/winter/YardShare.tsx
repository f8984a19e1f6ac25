import type { GroupShare } from '../../graph/merit/survival/group-survival.ts';
import { ShareInterval } from '../parts/ShareInterval.tsx';

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
      <ShareInterval
        label="Drawn towards all yards"
        share={drawn}
        beside={{ share: towards, label: 'Share of all yards' }}
      />
    </>
  );
}
