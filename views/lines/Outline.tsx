import { useState } from 'preact/hooks';
import { Button } from '../parts/Button.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import { LineMark } from './LineMark.tsx';
import type { Life } from './lives.ts';
import styles from './Outline.module.css';
import { type Branch, branchesOf } from './outline-tree.ts';
import type { LineSummary } from './summaries.ts';
import { fateText, makingText, sinceText, wintersText } from './words.ts';

export interface OutlineProps {
  readonly lives: readonly Life[];
  readonly lines: readonly LineSummary[];
}

/** Lines listed before the rest is asked for. */
const AT_FIRST = 12;

/** The same as the drawing, as nested lists: each queen under her dam. */
export function Outline({ lives, lines }: OutlineProps) {
  const [all, setAll] = useState(false);
  const more = lines.length > AT_FIRST + 1;
  return (
    <section class={styles.outline} aria-labelledby="lines-as-list">
      <h2 id="lines-as-list">The same as a list</h2>
      {(more && !all ? lines.slice(0, AT_FIRST) : lines).map((line) => (
        <LineOutline key={line.line} line={line} lives={lives} />
      ))}
      {more && (
        <div>
          <Button look="quiet" onPress={() => setAll(!all)}>
            {all ? 'Fewer lines' : `All ${lines.length} lines`}
          </Button>
        </div>
      )}
    </section>
  );
}

function LineOutline({ line, lives }: { readonly line: LineSummary; readonly lives: readonly Life[] }) {
  const [open, setOpen] = useState(false);
  return (
    <details class={styles.line} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <LineMark letter={line.letter} hue={line.hue} /> {line.title}, {line.queens} on record
      </summary>
      {open && <Branches branches={branchesOf(lives, line.line)} />}
    </details>
  );
}

function Branches({ branches }: { readonly branches: readonly Branch[] }) {
  return (
    <ul class={styles.branches}>
      {branches.map(({ life, daughters }) => (
        <li key={life.id}>
          <p class={styles.queen}>
            <QueenName queen={life.id} /> <span>{aboutHer(life)}</span>
          </p>
          {daughters.length > 0 && <Branches branches={daughters} />}
        </li>
      ))}
    </ul>
  );
}

function aboutHer(life: Life): string {
  const made = life.how && life.how !== 'brought-in' ? `, ${makingText(life.how)}` : '';
  const winters = life.winters.length > 0 ? `; ${wintersText(life.winters)}` : '';
  return `${sinceText(life)}${made}; ${fateText(life)}${winters}`;
}
