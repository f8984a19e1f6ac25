import { useState } from 'preact/hooks';
import { answersFor, findingText, type Task, taskTitle } from '../../graph/calendar/index.ts';
import type { ColonyId, QueenId } from '../../src/journal/ids.ts';
import { labelOn } from '../../src/registry/queries.ts';
import { go } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import { Button } from '../parts/Button.tsx';
import { SavingNotices } from '../parts/SavingNotices.tsx';
import { useSaving } from '../parts/use-saving.ts';
import styles from './AnswerButtons.module.css';
import { replyTo } from './answers.ts';
import { whichWords } from './which-queen.ts';

type Answer = ReturnType<typeof answersFor>[number];

/** What may be found, what each means, and one tap to record it; or the task set aside. */
export function AnswerButtons({ task }: { readonly task: Task }) {
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
          const name = opens && answer.finding === 'done' ? 'Write it down' : found.name;
          const means = opens ? 'Opens the form for it.' : found.means;
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
          {whichWords(asking.queens, registry, store.on.value).map(({ id, words }) => (
            <Button key={id} size="hive" wide onPress={() => give(asking.answer, id)}>
              {words}
            </Button>
          ))}
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
