import type { TraitEvaluation, TraitWarning } from '../../graph/merit/evaluate.ts';
import type { Contribution } from '../../graph/merit/index-of-traits.ts';
import { TRAITS } from '../../graph/merit/traits/all-traits.ts';
import type { Trait, TraitId } from '../../graph/merit/traits/trait.ts';
import type { Evaluated } from '../../src/store/evaluation.ts';
import type { Candidate } from './ranking.ts';

/** Where a queen stands in one trait, and what that rests on. */
export interface TraitStanding {
  readonly trait: Trait;
  readonly evaluation: TraitEvaluation;
  /** Absent for a trait that the keeper leaves out. */
  readonly contribution: Contribution | undefined;
  /** Her breeding value in the trait's unit; absent where the trait has no records. */
  readonly breedingValue: number | undefined;
  readonly reliability: number | undefined;
}

/** Every trait: those that move her merit most first, those left out last, in the order in which they are shown. */
export function traitStandings(
  { answer }: Evaluated,
  { id, contributions }: Pick<Candidate, 'id' | 'contributions'>,
): readonly TraitStanding[] {
  const at = answer.evaluation.queens.indexOf(id);
  const order = new Map(contributions.map(({ trait }, place) => [trait, place]));
  return answer.evaluation.traits
    .flatMap((evaluation): TraitStanding[] => {
      const trait = TRAITS.find((each) => each.id === evaluation.trait);
      if (!trait) return [];
      return [
        {
          trait,
          evaluation,
          contribution: contributions.find((each) => each.trait === evaluation.trait),
          breedingValue: evaluation.breedingValue?.[at],
          reliability: evaluation.reliability?.[at],
        },
      ];
    })
    .sort((a, b) => (order.get(a.trait.id) ?? TRAITS.length) - (order.get(b.trait.id) ?? TRAITS.length));
}

const percentMore = (value: number) => `${signed(100 * (Math.exp(value) - 1), 0)}\u00a0%`;

const EFFECTS: Readonly<Record<TraitId, (value: number) => string>> = {
  'winter-survival': (value) => `${signed(100 * value, 0)} winters survived in 100`,
  'winter-strength': (value) => `${percentMore(value)} bees in spring`,
  'spring-build-up': (value) => `${signed(100 * (Math.exp(value) - 1), 1)}\u00a0% growth a week`,
  gentle: (value) => `${signed(value, 1)} points`,
  calm: (value) => `${signed(value, 1)} points`,
  'swarm-tendency': (value) => `${signed(value, 1)} points`,
  'mite-level': (value) => `${percentMore(value)} mites`,
  'mite-growth': (value) => `${percentMore(value)} growth of mites a month`,
  hygienic: (value) => `${percentMore(value)} on the odds that a cell is cleared`,
  'brood-pattern': (value) => `${signed(value, 1)} filled cells in 100`,
  honey: (value) => `${signed(value, 1)}\u00a0kg`,
};

/** A breeding value as a keeper says it, against the starting stock: "+0.3 points", "−12 % mites". */
export function effectWords(trait: TraitId, breedingValue: number): string {
  return EFFECTS[trait](breedingValue);
}

function signed(value: number, digits: number): string {
  const rounded = Number(value.toFixed(digits));
  if (rounded === 0) return '±0';
  return rounded > 0 ? `+${rounded}` : `−${-rounded}`;
}

/** "+0.6 of a spread better", "hardly different": how she stands before the weight. */
export function standingWords({ standardised }: Pick<Contribution, 'standardised'>): string {
  const rounded = Math.abs(standardised).toFixed(1);
  if (rounded === '0.0') return 'as the starting stock';
  return `${rounded} of a spread ${standardised > 0 ? 'better' : 'worse'}`;
}

const WARNINGS: Readonly<Record<TraitWarning, string>> = {
  'no-records': 'No record can be compared yet, so this trait only adds doubt.',
  'only-small-groups':
    'Every comparison group is small (fewer than five queens): what it says of any queen is mostly luck.',
  'some-small-groups': 'Some comparison groups are small (fewer than five queens): those say little.',
  'below-protocol':
    'Some figures rest on fewer evaluations a season than the protocol asks for; they weigh less.',
  'assumed-variances': 'How much of it is inherited is assumed: no published estimate was found.',
  'not-converged': 'The values could not be worked out to the accuracy wanted, so the trait is left open.',
};

export function warningWords(warning: TraitWarning): string {
  return WARNINGS[warning];
}

const FROM: Readonly<Record<TraitEvaluation['variancesFrom'], string>> = {
  own: 'estimated from your own records, as you chose',
  'published-scaled': 'shares of it, scaled to the spread of your own records',
  published: 'shares of it, with an assumed spread: your records are too few to tell it',
};

/** Where the variances of a trait come from, in a sentence. */
export function variancesWords({ variancesFrom, source }: TraitEvaluation, trait: Trait): string {
  if (variancesFrom === 'own') return `Variances ${FROM.own}.`;
  const status =
    trait.variances.status === 'published'
      ? 'Published'
      : trait.variances.status === 'assumed'
        ? 'Assumed'
        : 'From memory';
  return `${status} ${FROM[variancesFrom]}. ${source.replaceAll('+-', '±')}.`;
}
