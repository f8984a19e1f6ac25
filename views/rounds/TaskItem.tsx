import { useState } from 'preact/hooks';
import {
  answersFor,
  cautionsFor,
  findingText,
  type Task,
  taskText,
  taskTitle,
} from '../../graph/calendar/index.ts';
import { dayOfNumber } from '../../src/journal/day.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { labelOn, queenTitle } from '../../src/registry/queries.ts';
import { go } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { windowText } from '../parts/days.ts';
import { SavingNotices } from '../parts/SavingNotices.tsx';
import { useSaving } from '../parts/use-saving.ts';
import { replyTo } from './answers.ts';
import styles from './TaskItem.module.css';
import { Ways } from './Ways.tsx';
import { waysOf } from './ways.ts';

type Answer = ReturnType<typeof answersFor>[number];

/** One thing to look for or do: its title and window; opened, what each finding means, each recorded by one tap. */
export function TaskItem({ task, open = false }: { readonly task: Task; readonly open?: boolean }) {
  const { on, registry } = useStore();
  const colony = registry.value.colonies.get(task.colony as ColonyId);
  const window = { first: dayOfNumber(task.from), last: dayOfNumber(task.to) };
  return (
    <details class={`${styles.task} ${task.overdue ? styles.overdue : ''}`} open={open}>
      <summary>
        <span class={styles.title}>{taskTitle(task)}</span>
        <span class={styles.when}>
          {task.overdue ? 'was due ' : ''}
          {windowText(window, on.value)}
        </span>
      </summary>
      <div class={styles.inside}>
        <p>{taskText(task, { ways: task.kind !== 'do' })}</p>
        {colony && <Ways task={task} colony={colony} />}
        {colony && waysOf(task).length > 0 && <h4 class={styles.found}>What you find now</h4>}
        <Answers task={task} />
        {cautionsFor(task).map((caution) => (
          <p key={caution} class={styles.caution}>
            {caution}
          </p>
        ))}
      </div>
    </details>
  );
}

function Answers({ task }: { readonly task: Task }) {
  const store = useStore();
  const saving = useSaving();
  const [asking, setAsking] = useState<
    { readonly answer: Answer; readonly queens: readonly QueenId[] } | undefined
  >();
  const registry = store.registry.value;
  const colony = registry.colonies.get(task.colony as ColonyId);
  const label = colony ? labelOn(colony, store.on.value) : '';

  const give = async (answer: Answer, which?: QueenId) => {
    const reply = replyTo(registry, task, answer, store.on.value, which);
    if (!reply) return;
    if (reply.is === 'page') go(reply.href);
    else if (reply.is === 'which-queen') setAsking({ answer, queens: reply.queens });
    else await saving.save(reply.drafts, `${label}: ${findingText(answer.finding).name}`);
  };
  const setAside = () =>
    saving.save(
      [
        {
          kind: 'task-settled',
          day: store.on.value,
          colony: task.colony as ColonyId,
          task: task.uid,
          how: 'set-aside',
        },
      ],
      `${label}: ${taskTitle(task)} set aside`,
    );
  return (
    <>
      <dl class={styles.answers}>
        {answersFor(task).map((answer) => {
          const opens = replyTo(registry, task, answer, store.on.value)?.is === 'page';
          const found = findingText(answer.finding);
          const { name, means } = opens ? { name: 'Write it down', means: 'Opens the form for it.' } : found;
          return (
            <div key={answer.finding}>
              <dt>
                <Button size="hive" wide disabled={saving.busy} onPress={() => give(answer)}>
                  {name}
                </Button>
              </dt>
              <dd>{means}</dd>
            </div>
          );
        })}
      </dl>
      {asking && (
        <div class={styles.which}>
          <p>Which of the queens expected here is it?</p>
          {asking.queens.map((id) => {
            const queen = registry.queens.get(id);
            const dam = queen?.parentage?.dams[0];
            const damRecord = dam && registry.queens.get(dam.queen);
            return (
              <Button key={id} onPress={() => give(asking.answer, id)}>
                {damRecord ? `A daughter of ${queenTitle(damRecord)}` : queen ? queenTitle(queen) : id}
              </Button>
            );
          })}
        </div>
      )}
      <SavingNotices saving={saving} />
      <div class={styles.aside}>
        <Button look="quiet" onPress={setAside}>
          Set this aside
        </Button>
      </div>
    </>
  );
}
