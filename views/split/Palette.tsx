import styles from './Palette.module.css';
import { FRAME_KINDS, FRAME_WORDS, type Hand } from './plan.ts';
import { Swatch } from './Swatch.tsx';
import { Token } from './Token.tsx';

export interface PaletteProps {
  /** Label of the source. */
  readonly source: string;
  readonly hand: Hand | undefined;
  readonly onHand: (hand: Hand | undefined) => void;
  readonly onDrop: (hand: Hand, key: string) => void;
}

/** The frames that can be taken out of the source, by kind. One stays in the hand until something else is taken. */
export function Palette({ source, hand, onHand, onDrop }: PaletteProps) {
  return (
    <fieldset class={styles.palette}>
      <legend>Take out of {source}</legend>
      {FRAME_KINDS.map((kind) => {
        const held: Hand = { holds: 'frame', kind };
        return (
          <Token
            key={kind}
            label={`Take a frame of ${FRAME_WORDS[kind]}`}
            inHand={hand?.holds === 'frame' && hand.from === undefined && hand.kind === kind}
            onLift={() => onHand(held)}
            onPutBack={() => onHand(undefined)}
            onDrop={(key) => onDrop(held, key)}
          >
            <Swatch kind={kind} /> {FRAME_WORDS[kind]}
          </Token>
        );
      })}
    </fieldset>
  );
}
