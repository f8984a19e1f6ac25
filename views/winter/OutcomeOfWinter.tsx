import { useState } from 'preact/hooks';
import { isLiving } from '../../src/registry/queries.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { awaitingOutcome, winterInQuestion, yardsInOrder } from '../parts/colony-facts.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { count, sentence, winterText } from '../parts/words.ts';
import { Losses } from './Losses.tsx';
import styles from './OutcomeOfWinter.module.css';
import { shareOf, type WinterOutcome, wintersKnown } from './outcomes.ts';
import { Survivors } from './Survivors.tsx';
import { shareWords } from './words.ts';
import { YardGrid } from './YardGrid.tsx';

/** One winter: the share that came through, the survivors by line, the losses by cause; and all winters by yard. */
export function OutcomeOfWinter({ outcomes }: { readonly outcomes: readonly WinterOutcome[] }) {
  const known = wintersKnown(outcomes);
  const [chosen, setChosen] = useState<number>();
  const winter = chosen ?? known[0];
  if (winter === undefined) {
    return (
      <>
        <ToTell />
        <EmptyState>
          Each winter will stand here: who came through, headed by whom and of which line, and what the others
          died of. Walk through the yard in spring and tell of each hive.
        </EmptyState>
      </>
    );
  }
  const ofWinter = outcomes.filter((each) => each.winter === winter);
  return (
    <>
      <ToTell />
      <div class={styles.head}>
        <select
          aria-label="Winter"
          value={winter}
          onChange={(event) => setChosen(Number(event.currentTarget.value))}
        >
          {known.map((each) => (
            <option key={each} value={each}>
              {sentence(winterText(each))}
            </option>
          ))}
        </select>
        <p class={styles.share}>{shareWords(shareOf(ofWinter))}.</p>
      </div>
      <div class={styles.both}>
        <Survivors outcomes={ofWinter} />
        <div class={styles.side}>
          <Losses outcomes={ofWinter} />
          <YardGrid outcomes={outcomes} />
        </div>
      </div>
    </>
  );
}

/** Yards whose winter is not told of yet, each with the way to its walk. */
function ToTell() {
  const registry = useRegistry();
  const on = useStore().on.value;
  const winter = winterInQuestion(on);
  const open = yardsInOrder(registry).flatMap((yard) => {
    const waiting = awaitingOutcome(registry, yard, winter, on).filter((colony) => isLiving(colony, on));
    return waiting.length === 0 ? [] : [{ yard, waiting }];
  });
  if (open.length === 0) return null;
  return (
    <ul class={styles.toTell}>
      {open.map(({ yard, waiting }) => (
        <li key={yard.id}>
          <Button href={routes.winterWalk(yard.id)}>
            {yard.name}: tell of {count(waiting.length, 'colony', 'colonies')}, {winterText(winter)}
          </Button>
        </li>
      ))}
    </ul>
  );
}
