import type { Queen } from '../../../src/registry/state.ts';
import { routes } from '../../app/routes.ts';
import { useStore } from '../../app/store-context.ts';
import { expectedQueens } from '../../parts/awaited.ts';
import { Notice } from '../../parts/Notice.tsx';
import { WhichQueen } from '../queen/WhichQueen.tsx';
import styles from './FollowUps.module.css';
import type { LookProps } from './InspectionForm.tsx';
import type { Look } from './seen.ts';

export interface FollowUpsProps extends LookProps {
  readonly head: Queen | undefined;
  readonly onLook: (change: Partial<Look>) => void;
}

/** What a sight may mean for the queens on record; nothing is concluded unless the keeper says so. */
export function FollowUps({ colony, look, head, onLook }: FollowUpsProps) {
  const { registry } = useStore();
  const { seen } = look;
  const coming = expectedQueens(colony, registry.value);
  const eggsOfExpected = seen.eggs === true && !head && coming.length > 0;
  const cells = (seen.openCells ?? 0) + (seen.cappedCells ?? 0) > 0 && head !== undefined;
  if (!eggsOfExpected && !cells) return null;
  return (
    <div class={styles.all}>
      {eggsOfExpected && (
        <WhichQueen
          label="Eggs here: who lays?"
          hint="A queen expected here is then recorded as laying. Leave it open if these may be another's eggs."
          queens={coming}
          value={look.lays}
          onChange={(lays) => onLook({ lays })}
        />
      )}
      {cells && (
        <Notice title="Cells in a colony with a queen">
          Swarm or supersedure. Before the first is capped there is time to{' '}
          <a href={routes.split(colony.id)}>split it</a>; the look is kept meanwhile.
        </Notice>
      )}
    </div>
  );
}
