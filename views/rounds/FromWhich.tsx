import { labelOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { lastStrength } from '../parts/colony-facts.ts';
import { HeadLine } from '../parts/HeadLine.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { StrengthBar } from '../parts/StrengthBar.tsx';
import type { FrameKind } from '../split/plan.ts';
import styles from './FromWhich.module.css';
import { giversTo } from './ways.ts';

export interface FromWhichProps {
  readonly to: Colony;
  readonly frame: FrameKind;
  readonly onClose: () => void;
}

/** Which hive a frame comes from: the queen who laid in it becomes the dam. */
export function FromWhich({ to, frame, onClose }: FromWhichProps) {
  const { registry, on } = useStore();
  const givers = giversTo(registry.value, to, frame, on.value);
  const what = frame === 'cells' ? 'A frame of cells' : 'A frame with eggs';
  return (
    <Sheet title={`${what} for ${labelOn(to, on.value)}: from which hive?`} onClose={onClose}>
      {givers.length === 0 && (
        <p>
          {frame === 'cells'
            ? 'Cells are being raised in no other hive.'
            : 'No queen is known to lay in any other hive.'}
        </p>
      )}
      <ul class={styles.givers}>
        {givers.map((colony) => (
          <li key={colony.id}>
            <Button size="hive" wide href={routes.carry(colony.id, { into: to.id, frame })}>
              {labelOn(colony, on.value)}
            </Button>
            <HeadLine colony={colony} registry={registry.value} on={on.value} />
            <StrengthBar strength={lastStrength(colony, on.value)} on={on.value} />
          </li>
        ))}
      </ul>
      <p class={styles.note}>
        The new queen becomes a daughter of the one who laid the eggs: take them from a queen worth it, and
        from a healthy hive only.
      </p>
    </Sheet>
  );
}
