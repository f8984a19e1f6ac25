import type { TraitId } from '../../graph/merit/traits/trait.ts';
import { list } from './words.ts';

/** Names of the traits, and their figures as a keeper says them: records are kept as logarithms where that is fair. */

export const TRAIT_TITLES: Readonly<Record<TraitId, string>> = {
  'winter-survival': 'Came through winter',
  'winter-strength': 'Strength kept over winter',
  'spring-build-up': 'Spring build-up',
  gentle: 'Gentle',
  calm: 'Calm on the comb',
  'swarm-tendency': 'No swarm tendency',
  'mite-level': 'Few mites',
  'mite-growth': 'Slow growth of mites',
  hygienic: 'Hygienic',
  'brood-pattern': 'Brood pattern',
  honey: 'Honey',
};

const percent = (share: number) => `${round(100 * share)}\u00a0%`;

const FIGURES: Readonly<Record<TraitId, (value: number, alike: string) => string>> = {
  'winter-survival': (value) => (value >= 1 ? 'alive' : 'dead'),
  'winter-strength': (value) => `${percent(Math.exp(value))} of autumn`,
  'spring-build-up': (value) => `${signed(100 * (Math.exp(value) - 1))}\u00a0% a week`,
  gentle: points,
  calm: points,
  'swarm-tendency': points,
  'mite-level': (value, alike) =>
    alike === 'natural-drop' ? `${round(Math.exp(value))} a day` : percent(Math.exp(value)),
  'mite-growth': (value) => `× ${round(Math.exp(value))} a month`,
  hygienic: (value) => `${percent(1 / (1 + Math.exp(-value)))} cleared`,
  'brood-pattern': (value) => `${Math.round(value)}\u00a0%`,
  honey: (value) => `${round(value)}\u00a0kg`,
};

/** A record's figure in the trait's own words; `alike` is what the comparison group has in common besides its place. */
export function traitFigure(trait: TraitId, value: number, alike = ''): string {
  return FIGURES[trait](value, alike);
}

const POINTS = / points?$/;

/** Several records of one queen: "2.5 and 3 points", "alive and dead". */
export function traitFigures(trait: TraitId, values: readonly number[], alike = ''): string {
  const figures = [...new Set(values.map((value) => traitFigure(trait, value, alike)))];
  const last = figures.at(-1) ?? '';
  if (figures.length < 2 || !POINTS.test(last)) return list(figures);
  return `${list(figures.map((figure) => figure.replace(POINTS, '')))} points`;
}

function points(value: number): string {
  const figure = Number(value.toFixed(1));
  return `${figure} ${figure === 1 ? 'point' : 'points'}`;
}

function signed(value: number): string {
  const rounded = Math.round(value);
  return rounded > 0 ? `+${rounded}` : rounded < 0 ? `−${-rounded}` : '0';
}

/** Two figures that count: 0.62, 3.4, 12. */
function round(value: number): string {
  return String(value >= 10 ? Math.round(value) : Number(value.toPrecision(2)));
}
