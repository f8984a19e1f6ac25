import styles from './Comb.module.css';
import type { SketchFrame } from './sketch.ts';

export interface CombProps {
  readonly frame: SketchFrame;
  /** Area of one side in dm2; deeper frames are drawn taller. */
  readonly sideDm2: number;
}

const WIDTH = 34;
/** Pixels of height for each dm2 of a side. */
const HEIGHT_OF_DM2 = 7;
const BEES_HEIGHT = 5;

/**
 * A frame taken out and held up: stores hatched at the top, under them capped brood filled and open brood dotted; the bar
 * beneath is how far bees cover it. Deeper frames are taller. The words for it stand in its button.
 */
export function Comb({ frame, sideDm2 }: CombProps) {
  const height = Math.round(sideDm2 * HEIGHT_OF_DM2);
  const inner = height - 2;
  const open = frame.brood * OPEN[frame.age];
  const bands = [
    { name: 'stores', share: frame.stores },
    { name: 'capped', share: frame.brood - open },
    { name: 'open', share: open },
  ];
  let top = 1;
  return (
    <svg class={styles.comb} width={WIDTH} height={height + BEES_HEIGHT + 16} aria-hidden="true">
      <g transform="translate(0 13)">
        {bands.map(({ name, share }) => {
          if (share === 0) return null;
          const y = top;
          top += share * inner;
          return (
            <rect
              key={name}
              class={styles[name]}
              x="1"
              y={y}
              width={WIDTH - 2}
              height={share * inner}
              fill={`url(#comb-${name})`}
            />
          );
        })}
        <rect class={styles.frame} x="1" y="1" width={WIDTH - 2} height={inner} />
        {frame.cells && <path class={styles.cell} d={`M${WIDTH - 12} ${height - 1}v5a3 3 0 0 0 6 0v-5`} />}
        <rect class={styles.room} x="1" y={height + 1} width={WIDTH - 2} height={BEES_HEIGHT - 1} />
        <rect
          class={styles.bees}
          x="1"
          y={height + 1}
          width={(WIDTH - 2) * frame.bees}
          height={BEES_HEIGHT - 1}
        />
      </g>
      {(frame.queen || frame.eggs) && (
        <text class={styles.mark} x={WIDTH / 2} y="10">
          {frame.queen ? '♀' : 'eggs'}
        </text>
      )}
    </svg>
  );
}

const OPEN = { open: 0.75, both: 9 / 21, capped: 0.25 } as const;

/** The fillings of combs, defined once on a page. */
export function CombFillings() {
  return (
    <svg class={styles.fillings} aria-hidden="true">
      <defs>
        <pattern
          id="comb-stores"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect class={styles.hatch} width="2" height="5" />
        </pattern>
        <pattern id="comb-capped" width="6" height="6" patternUnits="userSpaceOnUse">
          <rect class={styles.solid} width="6" height="6" />
        </pattern>
        <pattern id="comb-open" width="6" height="6" patternUnits="userSpaceOnUse">
          <circle class={styles.ring} cx="3" cy="3" r="1.8" />
        </pattern>
      </defs>
    </svg>
  );
}

/** What the drawing of a comb means. */
export function CombKey() {
  return (
    <p class={styles.key}>
      <Sample name="stores" /> stores <Sample name="capped" /> capped brood <Sample name="open" /> open brood.
      The bar beneath: how far bees cover it.
    </p>
  );
}

function Sample({ name }: { readonly name: 'stores' | 'capped' | 'open' }) {
  return (
    <svg class={styles.sample} width="16" height="16" aria-hidden="true">
      <rect class={styles.frame} x="1" y="1" width="14" height="14" />
      <rect x="1" y="1" width="14" height="14" fill={`url(#comb-${name})`} />
    </svg>
  );
}
