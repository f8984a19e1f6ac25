import { cautionsFor, type Task, taskText, taskTitle } from '../../graph/calendar/index.ts';
import { dayOfNumber } from '../../src/journal/day.ts';
import type { ColonyId } from '../../src/journal/ids.ts';
import { useStore } from '../app/store-context.ts';
import { windowText } from '../parts/days.ts';
import { AnswerButtons } from './AnswerButtons.tsx';
import styles from './TaskItem.module.css';
import { Ways } from './Ways.tsx';
import { waysOf } from './ways.ts';

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
        <p class={saysMore(task) ? '' : styles.known}>{taskText(task, { ways: task.kind !== 'do' })}</p>
        {colony && <Ways task={task} colony={colony} />}
        {colony && waysOf(task).length > 0 && <h3 class={styles.found}>What you find now</h3>}
        <AnswerButtons task={task} />
        {cautionsFor(task).map((caution) => (
          <p key={caution} class={styles.caution}>
            {caution}
          </p>
        ))}
      </div>
    </details>
  );
}

/** Whether the text tells more than the title and the window beside it. */
function saysMore({ fallbacks, lastUseful }: Task): boolean {
  return fallbacks.length > 0 || lastUseful !== undefined;
}
