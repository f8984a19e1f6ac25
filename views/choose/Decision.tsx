import { useState } from 'preact/hooks';
import { routes } from '../app/routes.ts';
import { Button } from '../parts/Button.tsx';
import { PageHeader } from '../parts/PageHeader.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import { Ahead } from './Ahead.tsx';
import { brothersAnswer, daughtersAnswer } from './answers.ts';
import { CompareSheet } from './CompareSheet.tsx';
import { Daughters } from './Daughters.tsx';
import styles from './Decision.module.css';
import { Grounds } from './Grounds.tsx';
import { Order } from './Order.tsx';
import { Question } from './Question.tsx';
import type { Choice } from './use-choice.ts';
import { Weights } from './Weights.tsx';
import { WhatIf } from './WhatIf.tsx';
import { Where } from './Where.tsx';
import { Whom } from './Whom.tsx';
import { planLead, rankingLead } from './words.ts';

export interface DecisionProps {
  readonly choice: Choice;
  /** The records changed; the evaluation shown is the one before. */
  readonly underWay: boolean;
}

/** The screen: whom, how many daughters, flown where; then what if, what follows, and what it all rests on. */
export function Decision({ choice, underWay }: DecisionProps) {
  const [open, setOpen] = useState<'weights' | 'compare'>();
  const close = () => setOpen(undefined);
  const ranked = rankingLead(choice.ranking, ({ id }) => choice.nameOf(id));
  const dams = choice.plan?.dams.map(({ row, daughters }) => ({ name: choice.nameOf(row.id), daughters }));
  const told = choice.ranking.rows.some(({ standing }) => standing !== 'unranked');
  const lead = told && dams && dams.length > 0 ? planLead(dams) : ranked;
  return (
    <>
      <PageHeader title="Choose" lead={lead} />
      {underWay && (
        <p class={styles.underWay} role="status">
          The records changed; the values are being worked out anew.
        </p>
      )}
      <div class={styles.acts}>
        <span class={styles.phone}>
          <Button look="quiet" onPress={() => setOpen('weights')}>
            What counts
          </Button>
        </span>
        <Button look="quiet" onPress={() => setOpen('compare')}>
          Compare
        </Button>
        <Button look="quiet" href={routes.choose({ sheet: true })}>
          On one page
        </Button>
      </div>
      <div class={styles.page}>
        <Whom choice={choice} />
        <aside class={styles.weights} aria-label="What counts">
          <h2>What counts</h2>
          <Weights choice={choice} />
        </aside>
      </div>
      <div class={styles.below}>
        <Question
          title="How many daughters from whom?"
          about={daughtersAnswer(choice.ranking, choice.plan, choice.curve)}
          openAtDesk
        >
          {() => <Daughters choice={choice} />}
        </Question>
        <Question title="Do the virgins meet their own brothers?" about={brothersAnswer(choice)} openAtDesk>
          {() => <Where choice={choice} />}
        </Question>
        <Question
          title="What if?"
          about="One mating before it is made: flown elsewhere, other drones, insemination."
        >
          {() => <WhatIf choice={choice} />}
        </Question>
        <Question title="Where does it lead?" about="A way of breeding played out over some seasons.">
          {() => <Ahead choice={choice} />}
        </Question>
        <Question
          title="What does it rest on?"
          about="Records, comparison groups, what was set aside, variances."
        >
          {() => <Grounds choice={choice} />}
        </Question>
      </div>
      {open === 'weights' && (
        <Sheet title="What counts" onClose={close}>
          <Order choice={choice} lead={ranked} />
          <Weights choice={choice} />
        </Sheet>
      )}
      {open === 'compare' && <CompareSheet choice={choice} onClose={close} />}
    </>
  );
}
