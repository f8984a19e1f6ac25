import { useState } from 'preact/hooks';
import type { FrameSizeSetting } from '../../../src/store/settings.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { FrameSizeSheet } from './FrameSizeSheet.tsx';
import styles from './FrameSizes.module.css';

/** The keeper's own frame sizes, by which the planner reckons bees and brood. */
export function FrameSizes() {
  const store = useStore();
  const [open, setOpen] = useState<FrameSizeSetting | 'new'>();
  const { frameSizes } = store.settings.value;
  const remove = (size: FrameSizeSetting) =>
    store.changeSettings({ frameSizes: frameSizes.filter(({ id }) => id !== size.id) });
  return (
    <section class={styles.sizes}>
      <h2>Frame sizes</h2>
      <p>
        The split planner reckons bees and brood by the area of a comb. Measure one of yours inside the wood;
        the first stands for a new plan.
      </p>
      <ul>
        {frameSizes.map((size) => (
          <li key={size.id}>
            <span>
              <strong>{size.name}</strong>, {size.sideDm2.toFixed(1)} dm² a side
              {size.fullBees !== undefined && `, ${size.fullBees.toLocaleString('en-GB')} bees when full`}
            </span>
            <Button look="quiet" label={`Change the frame size ${size.name}`} onPress={() => setOpen(size)}>
              Change
            </Button>
            <Button look="quiet" label={`Remove the frame size ${size.name}`} onPress={() => remove(size)}>
              Remove
            </Button>
          </li>
        ))}
      </ul>
      <Button onPress={() => setOpen('new')}>Add a frame size</Button>
      {open && <FrameSizeSheet size={open === 'new' ? undefined : open} onClose={() => setOpen(undefined)} />}
    </section>
  );
}
