import { useState } from 'preact/hooks';
import { LineMark } from '../lines/LineMark.tsx';
import { hangsOn, verdict } from '../lines/line-words.ts';
import { Button } from '../parts/Button.tsx';
import styles from './LinesKept.module.css';
import { linesKept, type Plan } from './plan.ts';
import type { Choice } from './use-choice.ts';
import { daughtersWords, someOf } from './words.ts';

/** Lines without a daughter that are named, and lines that stand there before all are asked for. */
const NAMED = 4;
const SHOWN = 8;

/** Which lines go on, and what would be lost: each with what its winters say and on how many queens it hangs. */
export function LinesKept({ choice, plan }: { readonly choice: Choice; readonly plan: Plan }) {
  const [all, setAll] = useState(false);
  const kept = linesKept(choice.ranking, plan).flatMap((line) => {
    const summary = choice.lines.lines.find((each) => each.line === line.line);
    return summary ? [{ ...line, summary }] : [];
  });
  const going = kept.filter(({ daughters }) => daughters > 0);
  const without = kept.filter(({ daughters }) => daughters === 0);
  const names = someOf(
    without.map(({ summary }) => summary.title),
    NAMED,
  );
  const shown = all ? kept : kept.slice(0, Math.max(SHOWN, going.length));
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
        {shown.map(({ line, daughters, summary }) => (
          <li key={line}>
            <LineMark letter={summary.letter} hue={summary.hue} />
            <span class={styles.title}>{summary.title}</span>
            <span>{daughtersWords(daughters)}</span>
            <span class={styles.about}>
              {hangsOn(summary)}; winters: {verdict(summary) ?? 'none that count'}
            </span>
          </li>
        ))}
      </ul>
      {kept.length > shown.length && (
        <Button look="quiet" onPress={() => setAll(true)}>
          Show all {kept.length} lines
        </Button>
      )}
    </div>
  );
}
