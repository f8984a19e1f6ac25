import { queenTitle } from '../../src/registry/queries.ts';
import { useRegistry } from '../app/store-context.ts';
import { TRAIT_TITLES, traitFigure, traitFigures } from '../parts/trait-words.ts';
import { betterScale, dots } from './dot-strip.ts';
import { type ComparisonGroup, groupWords, type HerTrait } from './her-traits.ts';
import styles from './TraitGroup.module.css';

export interface TraitGroupProps {
  readonly trait: HerTrait;
  readonly group: ComparisonGroup;
  /** What tells this group from the others of the trait, besides its season. */
  readonly beside: string;
  /** Pixels of the whole row. */
  readonly width: number;
}

const DOT = 5;
const STEP = 11;
const NARROW = 520;

/** One comparison group as a strip of dots, hers filled, with her figure and her place in words. */
export function TraitGroup({ trait, group, beside, width }: TraitGroupProps) {
  const registry = useRegistry();
  const narrow = width < NARROW;
  const strip = narrow ? width : width - 276;
  const { x } = betterScale(trait, DOT + 2, strip - DOT - 2);
  const placed = dots(group.members, x, STEP, strip);
  const rows = Math.max(...placed.map(({ row }) => row)) + 1;
  const height = rows * STEP + 8;
  const line = height - DOT - 2;
  const figure = (value: number) => traitFigure(trait.trait, value, group.alike);
  const own = group.members.filter((member) => member.hers).map(({ value }) => value);
  const hers = traitFigures(trait.trait, own, group.alike);
  const nameOf = (id: (typeof group.members)[number]['queen']) => {
    const queen = registry.queens.get(id);
    return queen ? queenTitle(queen) : 'a queen not on record';
  };
  return (
    <div class={narrow ? styles.narrow : styles.wide}>
      <p class={styles.where}>
        {group.season} {beside && <span>{beside}</span>}
      </p>
      <svg
        width={strip}
        height={height}
        role="img"
        aria-label={`${TRAIT_TITLES[trait.trait]}, ${group.yard} ${group.season}: hers ${hers}, ${groupWords(trait.trait, group)}`}
      >
        <line class={styles.line} x1="0" x2={strip} y1={line} y2={line} />
        {placed.toReversed().map((dot) => (
          <circle
            key={`${dot.x} ${dot.row}`}
            class={dot.hers ? styles.hers : group.small ? styles.few : styles.other}
            cx={dot.x}
            cy={line - dot.row * STEP}
            r={dot.hers ? DOT + 1 : DOT - 0.5}
          >
            <title>{`${nameOf(dot.queen)}: ${figure(dot.value)}`}</title>
          </circle>
        ))}
      </svg>
      <p class={styles.says}>
        <strong>{hers}</strong> <span>{groupWords(trait.trait, group)}</span>
      </p>
    </div>
  );
}

/** The ends of the scale under the groups of a trait: the worst and the best figure seen. */
export function TraitEnds({ trait, width }: Pick<TraitGroupProps, 'trait' | 'width'>) {
  const { worst, best } = betterScale(trait, 0, 1);
  const alike = trait.groups.every((group) => group.alike === trait.groups[0]?.alike);
  if (worst === best || !alike) return null;
  const figure = (value: number) => traitFigure(trait.trait, value, trait.groups[0]?.alike);
  return (
    <div class={width < NARROW ? styles.narrowEnds : styles.ends}>
      <span>{figure(worst)}</span>
      <span>{figure(best)}</span>
    </div>
  );
}
