import { damCertainty } from '../../src/registry/queries.ts';
import type { Queen } from '../../src/registry/state.ts';
import type { LineSummary } from '../lines/summaries.ts';
import { wintersText } from '../lines/words.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import type { DaughterCounts } from './daughter-counts.ts';
import type { HerTrait } from './her-traits.ts';

/** What speaks for multiplying a queen and what holds it back, from the facts alone; each a sentence. */
export interface WorthFacts {
  readonly queen: Queen;
  readonly winters: readonly number[];
  readonly line: LineSummary | undefined;
  readonly traits: readonly HerTrait[];
  readonly daughters: DaughterCounts;
  /** Expected inbreeding of her brood, 0 to 1; absent when she has not mated or the records contradict themselves. */
  readonly broodInbreeding?: number | undefined;
}

export interface Reasons {
  readonly speaksFor: readonly string[];
  readonly holdsBack: readonly string[];
}

/** Brood inbreeding from which it is named as a reason: that of a daughter of cousins by one drone line, 1/16. */
const NOTED_INBREEDING = 1 / 16;

export function reasons(facts: WorthFacts): Reasons {
  return { speaksFor: speaksFor(facts), holdsBack: holdsBack(facts) };
}

function speaksFor({ winters, line, traits, daughters }: WorthFacts): readonly string[] {
  const found: string[] = [];
  if (winters.length > 0) found.push(`She came through ${wintersText(winters)}.`);
  if (daughters.wintersCameOut > 1) {
    found.push(
      `Her daughters came out of ${daughters.wintersCameOut} of ${daughters.wintersWentIn} winters.`,
    );
  }
  const leads = standing(traits, ({ place, queens }) => place <= queens / 3);
  if (leads) found.push(`In the best third of her neighbours: ${leads}.`);
  if (line?.living === 1)
    found.push(`Line ${line.letter} hangs on one queen: a daughter of its blood would keep it.`);
  return found;
}

const NOT_LAYING: Readonly<Record<Exclude<Queen['state']['is'], 'laying'>, string>> = {
  expected: 'She does not lay yet.',
  failed: 'She came to nothing.',
  gone: 'She is gone: what she was worth is in her daughters.',
  unknown: 'Where she is now is not known.',
};

function holdsBack({ queen, winters, traits, broodInbreeding, daughters }: WorthFacts): readonly string[] {
  const found: string[] = [];
  if (queen.state.is !== 'laying') found.push(NOT_LAYING[queen.state.is]);
  if (winters.length === 0 && queen.tenures.length > 0) {
    found.push('She has crossed no winter: nothing says yet that she is a survivor.');
  }
  if (damCertainty(queen) === 'probable')
    found.push('Her dam is only probable, so what is known of her line counts less.');
  if (broodInbreeding !== undefined && broodInbreeding >= NOTED_INBREEDING) {
    const percent = Math.round(100 * broodInbreeding);
    found.push(
      `Her brood is expected ${percent}\u00a0% inbred: of 100 worker cells about ${percent} more than among strangers stay empty.`,
    );
  }
  const trails = standing(traits, ({ place, queens }) => place > (2 * queens) / 3);
  if (trails) found.push(`In the last third of her neighbours: ${trails}.`);
  if (daughters.failed > daughters.cameToLay)
    found.push('More of her daughters came to nothing than came to lay.');
  const groups = traits.flatMap((trait) => trait.groups);
  if (groups.length === 0) found.push('No record of her colonies can be compared with neighbours.');
  else if (groups.every(({ small }) => small)) {
    found.push('Every group she is compared in is small: what looks like her worth may be luck.');
  }
  return found;
}

/** Traits of which more than half the fair comparisons are such: "Gentle in 2 of 3 seasons; Honey in 1 of 1". */
function standing(
  traits: readonly HerTrait[],
  such: (group: HerTrait['groups'][number]) => boolean,
): string | undefined {
  const named = traits.flatMap(({ trait, groups }) => {
    // Alive or dead is no order to stand in; the winters themselves are named.
    if (trait === 'winter-survival') return [];
    const fair = groups.filter(
      ({ small, members }) => !small && new Set(members.map(({ value }) => value)).size > 1,
    );
    const count = fair.filter(such).length;
    if (count * 2 <= fair.length) return [];
    return [
      `${TRAIT_TITLES[trait]} (${count === fair.length ? seasonsText(count) : `${count} of ${fair.length} groups`})`,
    ];
  });
  return named.length > 0 ? named.join('; ') : undefined;
}

function seasonsText(count: number): string {
  return count === 1 ? 'one group' : `all ${count} groups`;
}
