import { LineMark } from '../lines/LineMark.tsx';
import { hangsOn, verdict } from '../lines/line-words.ts';
import { list } from '../parts/words.ts';
import styles from './LinesKept.module.css';
import { linesKept, type Plan } from './plan.ts';
import type { Choice } from './use-choice.ts';
import { daughtersWords } from './words.ts';

/** Which lines go on, and what would be lost: each with what its winters say and on how many queens it hangs. */
export function LinesKept({ choice, plan }: { readonly choice: Choice; readonly plan: Plan }) {
  const kept = linesKept(choice.ranking, plan).flatMap((line) => {
    const summary = choice.lines.lines.find((each) => each.line === line.line);
    return summary ? [{ ...line, summary }] : [];
  });
  const going = kept.filter(({ daughters }) => daughters > 0);
  const without = kept.filter(({ daughters }) => daughters === 0);
  const names = list(without.map(({ summary }) => summary.title));
  return (
    <div class={styles.kept}>
      <h3>
        {going.length} of {kept.length} lines go on
      </h3>
      <p>
        {without.length === 0
          ? 'No line is left without a daughter.'
          : `${names} ${without.length === 1 ? 'gets' : 'get'} no daughter: what only ${without.length === 1 ? 'that line carries' : 'those lines carry'} ends with the queens who live now.`}
      </p>
      <ul>
        {kept.map(({ line, daughters, summary }) => (
          <li key={line}>
            <LineMark letter={summary.letter} hue={summary.hue} />
            <span class={styles.title}>{summary.title}</span>
            <span class={styles.count}>{daughtersWords(daughters)}</span>
            <span class={styles.about}>
              {hangsOn(summary)}; winters: {verdict(summary) ?? 'none that count'}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
