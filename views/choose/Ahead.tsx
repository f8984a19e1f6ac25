import { useRef, useState } from 'preact/hooks';
import type { SeasonOutlook } from '../../graph/choice/look-ahead/look-ahead.ts';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { Progress } from '../parts/Progress.tsx';
import { useAskedTask } from '../parts/use-task.ts';
import styles from './Ahead.module.css';
import { OutlookFigures } from './OutlookFigures.tsx';
import { PolicyForm } from './PolicyForm.tsx';
import { lookAheadWork, type Outlook, ownDronesOf, problemWords, startWords, usualPolicy } from './policy.ts';
import type { Choice } from './use-choice.ts';

const SEASONS = 10;

/** Where a way of breeding leads over some seasons: many played histories, as bands. */
export function Ahead({ choice }: { readonly choice: Choice }) {
  const { evaluated, ranking, breeders, choosing, yards } = choice;
  const [outlook, setOutlook] = useState<Outlook>(() => ({
    policy: usualPolicy(evaluated, ranking, breeders, choosing, ownDronesOf(evaluated, yards)),
    seasons: SEASONS,
  }));
  const task = useAskedTask('look-ahead');
  const before = useRef<readonly SeasonOutlook[]>(undefined);
  const { answer } = task;
  const seasons = answer?.ok ? answer.seasons : undefined;
  const play = () => {
    before.current = seasons;
    task.ask(lookAheadWork(evaluated, ranking, breeders, outlook));
  };
  return (
    <div class={styles.ahead}>
      <div class={styles.asked}>
        <p class={styles.quiet}>{startWords(evaluated)}</p>
        <PolicyForm outlook={outlook} onChange={setOutlook} />
        <div class={styles.acts}>
          <Button look="main" disabled={task.busy} onPress={play}>
            Play it out
          </Button>
          {task.busy && <Button onPress={task.cancel}>Stop</Button>}
        </div>
        {task.busy && <Progress fraction={task.fraction} label="Histories played" />}
        <LeftOut />
      </div>
      <div class={styles.shown} aria-live="polite">
        {task.problem && (
          <Notice tone="warn" title="It could not be played out">
            Found: {task.problem}. Your records are safe.
          </Notice>
        )}
        {answer && !answer.ok && answer.code === 'problems' && (
          <Notice tone="warn" title="These settings cannot be played">
            {answer.problems.map((each) => (
              <p key={each.field}>{problemWords(each)}</p>
            ))}
          </Notice>
        )}
        {seasons ? (
          <OutlookFigures seasons={seasons} before={before.current} />
        ) : (
          !task.busy && <p class={styles.quiet}>Gain, inbreeding, sex alleles and lines will stand here.</p>
        )}
      </div>
    </div>
  );
}

function LeftOut() {
  return (
    <p class={styles.quiet}>
      It shows tendencies, not a forecast. Left out: vigour lost by inbreeding, colonies weak through poor
      brood, queens changed unseen, new stock brought in, linkage and mutation. Merit is taken as many small
      effects. The queens in the choice are the founders, taken to have met drones in the same shares.
    </p>
  );
}
