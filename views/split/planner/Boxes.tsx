import { useState } from 'preact/hooks';
import type { FrameSize } from '../../../graph/increase/comb.ts';
import { sideDm2 } from '../../../graph/increase/comb.ts';
import { Button } from '../../parts/Button.tsx';
import { NumberStepper } from '../../parts/NumberStepper.tsx';
import { SelectField } from '../../parts/SelectField.tsx';
import { Unfold } from '../../parts/Unfold.tsx';
import styles from './Boxes.module.css';
import { Comb } from './Comb.tsx';
import { FrameSizeSheet } from './FrameSizeSheet.tsx';
import { resizeBox, type SketchBox } from './sketch.ts';
import { frameWords } from './words.ts';

export interface BoxesProps {
  readonly boxes: readonly SketchBox[];
  readonly sizes: readonly FrameSize[];
  readonly chosen: string | undefined;
  readonly onChoose: (frame: string | undefined) => void;
  readonly onBoxes: (boxes: readonly SketchBox[]) => void;
  readonly newKey: () => string;
}

/** The hive box by box, the lowest first, each with its frames side by side and their size. */
export function Boxes({ boxes, sizes, chosen, onChoose, onBoxes, newKey }: BoxesProps) {
  const change = (key: string, next: SketchBox) =>
    onBoxes(boxes.map((box) => (box.key === key ? next : box)));
  const [adding, setAdding] = useState(false);
  const add = () => {
    const size = boxes.at(-1)?.size ?? sizes[0]?.name ?? '';
    onBoxes([
      ...boxes,
      resizeBox({ key: newKey(), size, frames: [] }, boxes.at(-1)?.frames.length ?? 10, newKey),
    ]);
  };
  return (
    <div class={styles.hive}>
      {boxes.map((box, at) => (
        <section key={box.key} class={styles.box} aria-label={titleOf(at, boxes.length)}>
          {boxes.length > 1 && <h3>{titleOf(at, boxes.length)}</h3>}
          <Frames box={box} sizes={sizes} chosen={chosen} onChoose={onChoose} />
          <Unfold class={styles.about} title={`${box.size}, ${box.frames.length} frames`}>
            <div class={styles.fields}>
              <SelectField
                label="Frames of this box"
                value={box.size}
                options={sizes.map(({ name }) => ({ value: name, label: name }))}
                onChange={(size) => size && change(box.key, { ...box, size })}
              />
              <NumberStepper
                label="Number of frames"
                min={1}
                max={15}
                value={box.frames.length}
                onChange={(count) => count && change(box.key, resizeBox(box, count, newKey))}
              />
              <Button look="quiet" onPress={() => setAdding(true)}>
                Another frame size
              </Button>
              {boxes.length > 1 && (
                <Button look="quiet" onPress={() => onBoxes(boxes.filter(({ key }) => key !== box.key))}>
                  Take this box off the plan
                </Button>
              )}
            </div>
          </Unfold>
        </section>
      ))}
      <Button look="quiet" onPress={add}>
        Add a box on top
      </Button>
      {adding && <FrameSizeSheet size={undefined} onClose={() => setAdding(false)} />}
    </div>
  );
}

function titleOf(at: number, of: number): string {
  if (of === 1) return 'The box';
  return at === 0 ? 'Lowest box' : at === of - 1 ? 'Top box' : `Box ${at + 1}`;
}

function Frames({
  box,
  sizes,
  chosen,
  onChoose,
}: Pick<BoxesProps, 'sizes' | 'chosen' | 'onChoose'> & { readonly box: SketchBox }) {
  const size = sizes.find(({ name }) => name === box.size) ?? sizes[0];
  return (
    <div class={styles.frames}>
      {box.frames.map((frame, at) => (
        <button
          key={frame.id}
          type="button"
          class={styles.frame}
          aria-pressed={frame.id === chosen}
          aria-label={frameWords(frame, at + 1)}
          onClick={() => onChoose(frame.id === chosen ? undefined : frame.id)}
        >
          <Comb frame={frame} sideDm2={size ? sideDm2(size) : 8} />
        </button>
      ))}
    </div>
  );
}
