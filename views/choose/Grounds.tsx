import type { TraitEvaluation } from '../../graph/merit/evaluate.ts';
import { TRAITS } from '../../graph/merit/traits/all-traits.ts';
import { dayOfNumber, type PlainDay } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { labelOn } from '../../src/registry/queries.ts';
import type { Registry } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { shortDay } from '../parts/days.ts';
import { TRAIT_TITLES } from '../parts/trait-words.ts';
import { Unfold } from '../parts/Unfold.tsx';
import styles from './Grounds.module.css';
import { ASIDE_WORDS, asideByReason, bySentence, groundWords, groupsWords, sourceWord } from './grounds.ts';
import { variancesWords, warningWords } from './trait-standing.ts';
import type { Choice } from './use-choice.ts';
import { Variances } from './Variances.tsx';

/** What every number rests on: records, comparison groups, what was set aside and why, variances. */
export function Grounds({ choice }: { readonly choice: Choice }) {
  return (
    <div class={styles.grounds}>
      <ul>
        {choice.evaluated.answer.evaluation.traits.map((trait) => (
          <TraitGround key={trait.trait} evaluation={trait} choice={choice} />
        ))}
      </ul>
      <p class={styles.quiet}>
        Merit is the sum of weight times breeding value over its spread, each trait turned so that more is
        better, divided by the root of the summed squared weights (selection index: Hazel 1943, Genetics
        28:476, from memory). One spread is what queens of the starting stock differ by, as a rule. Traits
        count as genetically unconnected, and variances as known; where they are assumed, the doubt is larger
        than drawn.
      </p>
      <Variances choice={choice} />
    </div>
  );
}

function TraitGround({
  evaluation,
  choice,
}: {
  readonly evaluation: TraitEvaluation;
  readonly choice: Choice;
}) {
  const trait = TRAITS.find(({ id }) => id === evaluation.trait);
  return (
    <li>
      <details class={styles.trait}>
        <summary>
          <span class={styles.title}>{TRAIT_TITLES[evaluation.trait]}</span>
          <span class={styles.about}>
            {groundWords(evaluation)}; {sourceWord(evaluation)}
          </span>
        </summary>
        <div class={styles.inside}>
          {trait && <p>{variancesWords(evaluation, trait)}</p>}
          {evaluation.warnings.map((warning) => (
            <p key={warning}>{warningWords(warning)}</p>
          ))}
          <dl class={styles.groups}>
            {groupsWords(evaluation, choice.yardName).map(({ season, words }) => (
              <div key={season}>
                <dt>{season}</dt>
                <dd>{words}</dd>
              </div>
            ))}
          </dl>
          <SetAsideList evaluation={evaluation} choice={choice} />
        </div>
      </details>
    </li>
  );
}

/** Records set aside, by reason; each leads to its entry. */
function SetAsideList({
  evaluation,
  choice,
}: {
  readonly evaluation: TraitEvaluation;
  readonly choice: Choice;
}) {
  const { registry, on } = choice.evaluated;
  return (
    <>
      {asideByReason(evaluation.setAside).map(({ code, records }) => (
        <Unfold key={code} class={styles.aside} title={`${records.length} set aside: ${ASIDE_WORDS[code]}`}>
          {bySentence(records).map((same) => (
            <div key={same.sentence}>
              <p>{same.sentence}</p>
              <ul>
                {same.records.map(({ observations, colony, day }) => (
                  <li key={observations.join()}>
                    <a href={routes.entry(observations.at(-1) ?? '')}>
                      {labelThen(registry, colony as ColonyId, dayOfNumber(day))},{' '}
                      {shortDay(dayOfNumber(day), on)}
                    </a>
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </Unfold>
      ))}
    </>
  );
}

/** The label that the colony bore on that day. */
function labelThen(registry: Registry, id: ColonyId, day: PlainDay): string {
  const colony = registry.colonies.get(id);
  return colony ? labelOn(colony, day) : 'a box not in these records';
}
