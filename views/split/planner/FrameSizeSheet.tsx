import { useState } from 'preact/hooks';
import { newEntryId } from '../../../src/journal/new-ids.ts';
import type { FrameSizeSetting } from '../../../src/store/settings.ts';
import { useStore } from '../../app/store-context.ts';
import { Button } from '../../parts/Button.tsx';
import { TextField } from '../../parts/Field.tsx';
import { Sheet } from '../../parts/Sheet.tsx';
import styles from './FrameSizes.module.css';
import { areaOf, figureOf } from './measures.ts';

export interface FrameSizeSheetProps {
  readonly size: FrameSizeSetting | undefined;
  readonly onClose: () => void;
}

/** One frame size: its name, the comb inside the wood by width and height, and how many bees cover it where counted. */
export function FrameSizeSheet({ size, onClose }: FrameSizeSheetProps) {
  const store = useStore();
  const [name, setName] = useState(size?.name ?? '');
  const [width, setWidth] = useState('');
  const [height, setHeight] = useState('');
  const [bees, setBees] = useState(size?.fullBees === undefined ? '' : String(size.fullBees));
  const sideDm2 = areaOf(width, height) ?? size?.sideDm2;
  const fullBees = figureOf(bees);
  const whole = name.trim() !== '' && sideDm2 !== undefined && sideDm2 <= 40;
  const save = async () => {
    if (!whole || sideDm2 === undefined) return;
    const changed: FrameSizeSetting = {
      id: size?.id ?? newEntryId(),
      name: name.trim(),
      sideDm2,
      ...(fullBees === undefined ? {} : { fullBees: Math.round(fullBees) }),
    };
    const { frameSizes } = store.settings.value;
    const kept = frameSizes.some(({ id }) => id === changed.id)
      ? frameSizes.map((each) => (each.id === changed.id ? changed : each))
      : [...frameSizes, changed];
    await store.changeSettings({ frameSizes: kept });
    onClose();
  };
  return (
    <Sheet title={size ? 'Change the frame size' : 'Add a frame size'} onClose={onClose}>
      <TextField
        label="Name"
        value={name}
        onChange={setName}
        hint="As you call it, such as brood box deep."
      />
      <div class={styles.measures}>
        <TextField label="Comb width (cm)" value={width} onChange={setWidth} inputMode="decimal" />
        <TextField label="Comb height (cm)" value={height} onChange={setHeight} inputMode="decimal" />
      </div>
      <p>{sideDm2 === undefined ? 'Measured inside the wood.' : `${sideDm2.toFixed(1)} dm² a side.`}</p>
      <TextField
        label="Bees on a full frame, both sides"
        value={bees}
        onChange={setBees}
        inputMode="numeric"
        hint="Where you have counted or weighed them. May stay empty: then 130 on a dm²."
      />
      <Button look="main" size="hive" disabled={!whole} onPress={save}>
        Save the size
      </Button>
    </Sheet>
  );
}
