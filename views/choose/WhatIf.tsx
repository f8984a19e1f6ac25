import { useMemo, useState } from 'preact/hooks';
import type { MatingOutlook } from '../../graph/choice/what-if-mating.ts';
import { Button } from '../parts/Button.tsx';
import { Notice } from '../parts/Notice.tsx';
import { useTask } from '../parts/use-task.ts';
import { KeptMatings } from './KeptMatings.tsx';
import { MatingForm } from './MatingForm.tsx';
import { MatingResult } from './MatingResult.tsx';
import { type MatingQuestion, matingWork, questionWords } from './mating.ts';
import type { Choice } from './use-choice.ts';
import styles from './WhatIf.module.css';

/** What would come of one mating, before it is made. */
export function WhatIf({ choice }: { readonly choice: Choice }) {
  const { evaluated, ranking } = choice;
  const [question, setQuestion] = useState<MatingQuestion>(() => firstQuestion(choice));
  const [kept, setKept] = useState<readonly KeptMating[]>([]);
  const work = useMemo(() => matingWork(evaluated, ranking, question), [evaluated, ranking, question]);
  const { answer, of, busy, problem } = useTask('mating', work);
  const words = questionWords(question, choice.nameOf, choice.yardName);
  const current = answer && of === work ? answer : undefined;
  return (
    <div class={styles.whatIf}>
      <MatingForm choice={choice} question={question} onChange={setQuestion} />
      <div class={styles.result} aria-live="polite" aria-busy={busy}>
        <h3>{words}</h3>
        {!work && <p>Choose whose drones give the semen.</p>}
        {problem && (
          <Notice tone="warn" title="This mating could not be worked out">
            Found: {problem}. Your records are safe; choose others, or reload the page.
          </Notice>
        )}
        {work && !current && !problem && <p class={styles.quiet}>Being worked out.</p>}
        {current && <MatingResult outlook={current} mates={work?.effectiveMates ?? 0} />}
        {current && !kept.some((each) => each.words === words) && (
          <Button look="quiet" onPress={() => setKept([...kept, { words, outlook: current }])}>
            Keep it in sight
          </Button>
        )}
        <KeptMatings kept={kept} onForget={() => setKept([])} />
      </div>
    </div>
  );
}

/** A mating looked at before, kept beside the next. */
export interface KeptMating {
  readonly words: string;
  readonly outlook: MatingOutlook;
}

function firstQuestion({ ranking, evaluated, yards }: Choice): MatingQuestion {
  const own = evaluated.work.yards.find(({ yard }) => yards.has(yard)) ?? evaluated.work.yards[0];
  return {
    dam: (ranking.rows[0]?.id ?? '') as MatingQuestion['dam'],
    manner: 'yard',
    yard: own?.yard,
    movedIn: [],
    movedShare: 0.5,
    donors: [],
    singleDrone: false,
  };
}
