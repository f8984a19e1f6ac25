import { groupBy } from '../../graph/grouping.ts';
import { firstDay } from '../../src/journal/day.ts';
import type { Queen } from '../../src/registry/state.ts';
import { wintersCrossed } from '../../src/registry/winters-of-queen.ts';
import { useStore } from '../app/store-context.ts';
import type { LineSummary } from '../lines/summaries.ts';
import { ColonyLabel } from '../parts/ColonyLabel.tsx';
import { dayInYear } from '../parts/days.ts';
import { QueenName } from '../parts/QueenName.tsx';
import { count, LOSS_CAUSES, number, QUEEN_LOSSES } from '../parts/words.ts';
import { FounderName } from './FounderName.tsx';
import { useLineOf } from './line-of.ts';
import type { WinterOutcome } from './outcomes.ts';
import styles from './Survivors.module.css';

/** Who came through, line by line: the box, who headed it, how many winters she has, and how strong it came out. */
export function Survivors({ outcomes }: { readonly outcomes: readonly WinterOutcome[] }) {
  const lineOf = useLineOf();
  const groups = byLine(
    outcomes.filter(({ alive }) => alive),
    lineOf,
  );
  return (
    <section class={styles.survivors} aria-labelledby="survivors">
      <h2 id="survivors">Survivors, by line</h2>
      {groups.length === 0 && <p>None by the records.</p>}
      {groups.map(({ line, of }) => (
        <div key={line?.line ?? 'none'}>
          <h3 class={styles.line}>
            {line ? <FounderName line={line} /> : 'Of no known line'}
            <span class={styles.count}>{of.length}</span>
          </h3>
          <ul>
            {of.map((outcome) => (
              <Survivor key={outcome.colony.id} outcome={outcome} />
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

function Survivor({ outcome }: { readonly outcome: WinterOutcome }) {
  const on = useStore().on.value;
  const { colony, head, winter, autumnFrames, springFrames } = outcome;
  const winters = head ? wintersCrossed(head, on).filter((each) => each <= winter).length : 0;
  const since = sinceWords(outcome, on);
  return (
    <li class={styles.one}>
      <span>
        <ColonyLabel colony={colony} />
      </span>
      <span>
        {head ? <QueenName queen={head} /> : 'nobody known headed it'}
        {since && <span class={styles.since}> {since}</span>}
      </span>
      <span class={styles.winters}>{head && winters > 0 ? count(winters, 'winter') : ''}</span>
      <span class={styles.frames}>
        {springFrames === undefined ? 'strength not seen' : `${number(springFrames)} frames`}
        {springFrames !== undefined && autumnFrames !== undefined && ` of ${number(autumnFrames)}`}
      </span>
    </li>
  );
}

/** What became of the queen or the colony since, where it is no longer so. */
function sinceWords({ colony, head, winter }: WinterOutcome, on: ReturnType<typeof firstDay>): string {
  if (colony.ended && firstDay(colony.ended.day) <= on)
    return `colony ended ${dayInYear(colony.ended.day, on)}, ${LOSS_CAUSES[colony.ended.cause]}`;
  const tenure = head && colony.tenures.findLast(({ queen }) => queen === head.id);
  if (!tenure?.to || firstDay(tenure.to) > on || firstDay(tenure.to) < `${winter}-01-01`) return '';
  return `${tenure.ended ? QUEEN_LOSSES[tenure.ended] : 'gone'} ${dayInYear(tenure.to, on)}`;
}

function byLine(
  outcomes: readonly WinterOutcome[],
  lineOf: (queen: Queen | undefined) => LineSummary | undefined,
): readonly { readonly line: LineSummary | undefined; readonly of: readonly WinterOutcome[] }[] {
  return [...groupBy(outcomes, ({ head }) => lineOf(head))]
    .map(([line, of]) => ({ line, of }))
    .sort(
      (a, b) => b.of.length - a.of.length || ((a.line?.letter ?? '~') < (b.line?.letter ?? '~') ? -1 : 1),
    );
}
