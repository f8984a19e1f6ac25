import { useMemo } from 'preact/hooks';
import { dayNumber } from '../../src/journal/day.ts';
import { dayText } from '../../src/journal/day-words.ts';
import { type ColonyRound, rounds, yearSettings } from '../../src/registry/rounds.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { weekday } from '../parts/days.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { count } from '../parts/words.ts';
import { CalendarFile } from './CalendarFile.tsx';
import { countBoxes } from './grouping.ts';
import { PaperCautions } from './PaperCautions.tsx';
import styles from './Rounds.module.css';
import { usePrintOpen } from './use-print-open.ts';
import { YardRound } from './YardRound.tsx';

const HORIZON_DAYS = 21;

/** What to look at today, in the order of driving; what stays shut; what was let slip; what comes. */
export function Rounds() {
  const store = useStore();
  const registry = useRegistry();
  const on = store.on.value;
  const { yearSpans, washEveryDays } = store.settings.value;
  const keeper = store.keeper.value.id;
  const page = usePrintOpen<HTMLElement>();
  const all = useMemo(
    () =>
      rounds(registry, {
        on,
        keeper,
        horizonDays: HORIZON_DAYS,
        year: yearSettings(yearSpans, washEveryDays, on),
      }),
    [registry, on, keeper, yearSpans, washEveryDays],
  );
  if (all.length === 0) {
    return (
      <EmptyState action={{ label: 'To the yards', href: routes.yards() }}>
        What to look at each day will stand here, yard by yard, once there is a colony.
      </EmptyState>
    );
  }
  const counts = countBoxes(
    all.flatMap(({ colonies }) => colonies),
    dayNumber(on),
  );
  return (
    <article class={styles.page} ref={page}>
      <PageHeader
        title={`${weekday(on)} ${dayText(on)}`}
        lead={summary(counts, ({ colony }) => registry.colonies.get(colony)?.label ?? '')}
        actions={
          <>
            <CalendarFile rounds={all} />
            <Button onPress={() => window.print()}>Print the round</Button>
          </>
        }
      />
      <div class={styles.yards}>
        {all.map((round) => (
          <YardRound key={round.yard ?? 'none'} round={round} />
        ))}
      </div>
      <PaperCautions rounds={all} />
    </article>
  );
}

const boxes = (many: number) => count(many, 'box', 'boxes');

/** The round in a sentence. A few boxes at which something slipped are named; many are counted. */
function summary(
  { now, shut, slipped }: ReturnType<typeof countBoxes>,
  labelOf: (round: ColonyRound) => string,
): string {
  const named = slipped.length <= 3 ? slipped.map(labelOf).join(', ') : boxes(slipped.length);
  const parts = [
    now === 0 ? 'Nothing has to be opened today' : `${boxes(now)} to look at`,
    shut === 0 ? '' : `${boxes(shut)} to leave shut`,
    slipped.length === 0 ? '' : `at ${named} something has slipped`,
  ].filter((part) => part !== '');
  return `${parts.join(', ')}.`;
}
