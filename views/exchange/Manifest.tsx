import type { ComponentChildren } from 'preact';
import { dayText } from '../../src/journal/day-words.ts';
import { list } from '../parts/words.ts';
import styles from './Manifest.module.css';
import type { Manifest as Facts } from './manifest.ts';

/** So many names stand in the line itself; more are opened. */
const IN_LINE = 6;

export interface ManifestProps {
  readonly facts: Facts;
  /** More lines, such as the photographs, or what stays at home. */
  readonly children?: ComponentChildren;
}

/** What a heap of entries holds, as a plain list: days, queens, boxes, yards and people by name, own words. */
export function Manifest({ facts, children }: ManifestProps) {
  const { from, to, queens, boxes, yards, keepers, others, words } = facts;
  return (
    <dl class={styles.manifest}>
      <Line title="Entries">
        {facts.entries.toLocaleString('en')}
        {from && to && (
          <span class={styles.days}>
            {from === to ? dayText(from) : `${dayText(from)} to ${dayText(to)}`}
          </span>
        )}
      </Line>
      <NameLine title="Queens" names={queens} italic />
      <NameLine title="Boxes" names={boxes} />
      {yards.length > 0 && (
        <Line title="Yards">
          {list(yards.map(({ name, where }) => (where ? `${name} (${where})` : name)))}
        </Line>
      )}
      <Line title="Written by">{list(keepers)}</Line>
      {others.length > 0 && (
        <Line title="From or to">
          <details class={styles.all}>
            <summary>
              {others.length === 1 ? '1 other place or person' : `${others.length} other places or people`}
            </summary>
            <p>{others.join('; ')}</p>
          </details>
        </Line>
      )}
      {words > 0 && (
        <Line title="Own words">
          {words === 1 ? '1 note or remark, as written' : `${words} notes and remarks, as written`}
        </Line>
      )}
      {children}
    </dl>
  );
}

/** One line of the list. */
export function Line({ title, children }: { readonly title: string; readonly children: ComponentChildren }) {
  return (
    <div class={styles.line}>
      <dt>{title}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function NameLine({
  title,
  names,
  italic = false,
}: {
  readonly title: string;
  readonly names: readonly string[];
  readonly italic?: boolean;
}) {
  if (names.length === 0) return null;
  const look = italic ? styles.names : '';
  if (names.length <= IN_LINE) {
    return (
      <Line title={title}>
        <span class={look}>{list(names)}</span>
      </Line>
    );
  }
  return (
    <Line title={title}>
      <details class={styles.all}>
        <summary>{names.length.toLocaleString('en')}, by name</summary>
        <p class={look}>{list(names)}</p>
      </details>
    </Line>
  );
}
