import { chanceAbove } from '../../graph/merit/index-errors.ts';
import { wintersCrossed } from '../../src/registry/winters-of-queen.ts';
import { percents } from '../parts/percents.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { list } from '../parts/words.ts';
import { evidenceOf, evidenceWords } from './evidence.ts';
import { fliesAt } from './plan.ts';
import type { Candidate } from './ranking.ts';
import { standingWords, traitStandings } from './trait-standing.ts';
import type { Choice } from './use-choice.ts';
import { chanceWords, daughtersWords, reliabilityWords, spreads, whyWords } from './words.ts';
import { brothersWords } from './yard-risk.ts';

/** Two or three queens side by side: one row a question, one column a queen. */
export interface ComparisonRow {
  readonly label: string;
  readonly cells: readonly ComparisonCell[];
}

export interface ComparisonCell {
  /** Said first and strongest; absent where the words say all. */
  readonly figure?: string;
  readonly words: string;
}

export function comparisonRows(choice: Choice, queens: readonly Candidate[]): readonly ComparisonRow[] {
  const row = (label: string, cell: (queen: Candidate) => string): ComparisonRow => ({
    label,
    cells: queens.map((queen) => ({ words: cell(queen) })),
  });
  return [
    row('Why', ({ contributions }) => whyWords(contributions)),
    row(
      'Known',
      (queen) =>
        `${reliabilityWords(queen.reliability)}: ${evidenceWords(evidenceOf(choice.evaluated, queen.id))}`,
    ),
    row('Truly the better', (queen) => betterWords(choice, queen, queens)),
    row('Winters crossed', ({ queen }) => String(wintersCrossed(queen, choice.evaluated.on).length)),
    row('Line', ({ line }) => choice.lines.lines.find((each) => each.line === line)?.title ?? ''),
    row('Kinship with the others', (queen) => kinWords(choice, queen, queens)),
    row('Daughters planned', (queen) => plannedWords(choice, queen)),
    row('Flown there, they meet', (queen) => meetWords(choice, queen)),
    ...traitRows(choice, queens),
  ];
}

/** "than Gale 5 in 10; than Ford 6 in 10". */
function betterWords({ ranking, nameOf }: Choice, queen: Candidate, queens: readonly Candidate[]): string {
  return others(queen, queens)
    .map((other) => {
      const chance = chanceAbove(ranking.merits, ranking.errors, queen.place, other.place);
      return `than ${nameOf(other.id)} ${chanceWords(chance)}`;
    })
    .join('; ');
}

function kinWords({ evaluated, nameOf }: Choice, queen: Candidate, queens: readonly Candidate[]): string {
  const size = evaluated.answer.candidates.length;
  return others(queen, queens)
    .map(
      (other) =>
        `${nameOf(other.id)} ${percents(evaluated.answer.kinship[queen.place * size + other.place] ?? 0)}`,
    )
    .join('; ');
}

function others(queen: Candidate, queens: readonly Candidate[]): readonly Candidate[] {
  return queens.filter(({ id }) => id !== queen.id);
}

function plannedWords({ plan }: Choice, { id }: Candidate): string {
  return daughtersWords(plan?.dams.find(({ row }) => row.id === id)?.daughters ?? 0);
}

function meetWords(choice: Choice, queen: Candidate): string {
  const flies = fliesAt(choice.evaluated, queen, choice.choosing.flownAt, choice.yards);
  if (!flies) return 'no yard known';
  const { risk } = flies;
  return `${choice.yardName(risk.yard)}: brood ${percents(risk.broodInbreeding)} inbred, ${brothersWords(risk)}`;
}

/** Each trait that counts, in the order of the first queen's reasons. */
function traitRows(choice: Choice, queens: readonly Candidate[]): readonly ComparisonRow[] {
  const standings = queens.map((queen) => traitStandings(choice.evaluated, queen));
  return (standings[0] ?? []).flatMap(({ trait, contribution }) => {
    if (!contribution) return [];
    const cells = standings.map((each) => {
      const found = each.find((other) => other.trait.id === trait.id)?.contribution;
      if (!found) return { words: '–' };
      const words = `${standingWords(found)}, ${reliabilityWords(found.reliability)}`;
      return { figure: spreads(found.points), words };
    });
    return [{ label: TRAIT_TITLES[trait.id], cells }];
  });
}

/** "Brook and Gale cannot be told apart": what the comparison comes to. */
export function verdictWords({ ranking, nameOf }: Choice, queens: readonly Candidate[]): string {
  const unranked = queens.filter(({ standing }) => standing === 'unranked').map(({ id }) => nameOf(id));
  const [first, ...rest] = queens
    .filter(({ standing }) => standing !== 'unranked')
    .sort((a, b) => b.merit - a.merit);
  const left =
    unranked.length > 0
      ? [`${list(unranked)} ${unranked.length === 1 ? 'is' : 'are'} not ranked: compared with too few.`]
      : [];
  if (!first) return left.join(' ');
  const behind = rest.map((other) => ({
    other,
    chance: chanceAbove(ranking.merits, ranking.errors, first.place, other.place),
  }));
  const level = behind.filter(({ chance }) => chance < LEVEL).map(({ other }) => nameOf(other.id));
  const apart = behind.filter(({ chance }) => chance >= LEVEL);
  const said = apart.map(
    ({ other, chance }) =>
      `${nameOf(first.id)} is truly better than ${nameOf(other.id)}: ${chanceWords(chance)}.`,
  );
  const same =
    level.length > 0 ? [`${list([nameOf(first.id), ...level])} cannot be told apart on these records.`] : [];
  return [...same, ...said, ...left].join(' ');
}

/** Chance below which two queens are called alike; the same as in the list. */
const LEVEL = 0.75;
