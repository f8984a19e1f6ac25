import { Notice } from '../parts/Notice.tsx';
import { percents } from '../parts/percents.ts';
import styles from './Daughters.module.css';
import { DaughtersAsked } from './DaughtersAsked.tsx';
import { LinesKept } from './LinesKept.tsx';
import { PlanList } from './PlanList.tsx';
import { gainBand, type Plan } from './plan.ts';
import { TradeOff } from './TradeOff.tsx';
import type { Choice } from './use-choice.ts';
import { spreads } from './words.ts';

/** How many daughters from whom: gain against kinship, drawn whole, and what the point chosen means. */
export function Daughters({ choice }: { readonly choice: Choice }) {
  const { curve, plan, evaluated, choosing } = choice;
  return (
    <div class={styles.parts}>
      <div class={styles.asked}>
        <DaughtersAsked choice={choice} />
        {plan && plan.daughters < choosing.daughters && (
          <p>
            {choosing.mostEach} from one queen at most allows {plan.daughters} of the {choosing.daughters}{' '}
            daughters wanted.
          </p>
        )}
        {curve?.is === 'impossible' && (
          <Notice tone="warn" title="No choice meets these limits">
            {curve.why.found} {curve.why.remedy}
          </Notice>
        )}
        {curve?.is === 'failed' && (
          <Notice tone="warn" title="The curve could not be worked out">
            Found: {curve.problem}. Your records are safe; reload the page and try once more.
          </Notice>
        )}
        {curve?.is === 'drawn' && curve.points.length === 1 && (
          <p class={styles.axes}>These limits allow one choice alone, so there is no curve to draw.</p>
        )}
        {curve?.is === 'drawn' && curve.points.length > 1 && (
          <>
            <p class={styles.axes}>
              Up: merit of the dams above the mean of those in the choice, in spreads. Right: kinship of the
              dams of two daughters; sisters of one open mating are about 15&nbsp;%, dam and daughter
              25&nbsp;%.
            </p>
            <TradeOff choice={choice} curve={curve} />
          </>
        )}
      </div>
      {plan && (
        <div class={styles.means}>
          <PlanList choice={choice} plan={plan} />
          <p>{meaning(plan, evaluated.answer.meanKinship?.ofSet, choosing.kinshipLimit)}</p>
          <LinesKept choice={choice} plan={plan} />
        </div>
      )}
    </div>
  );
}

/** What the point means, in sentences. */
function meaning(plan: Plan, livingKinship: number | undefined, limit: number | undefined): string {
  const [low, high] = gainBand(plan);
  const gain =
    `The dams stand ${spreads(plan.gain)} spreads above the mean of the queens in the choice, ` +
    `nine times in ten between ${spreads(low)} and ${spreads(high)}.`;
  const living =
    livingKinship === undefined ? '' : ` (${percents(livingKinship)} between two of all laying queens)`;
  const kinship = ` The dams of two daughters are related by ${percents(plan.kinship)}${living}.`;
  const brood =
    plan.broodInbreeding === undefined
      ? ''
      : ` Flown as planned, the daughters’ brood is expected ${percents(plan.broodInbreeding)} inbred.`;
  // Said only where the figures shown differ.
  const over =
    limit !== undefined && Math.round(100 * plan.kinship) > Math.round(100 * limit)
      ? ` The shares keep your limit of ${percents(limit)}; in whole daughters it cannot quite be kept.`
      : '';
  return gain + kinship + over + brood;
}
