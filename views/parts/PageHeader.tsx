import type { ComponentChildren } from 'preact';
import styles from './PageHeader.module.css';
import { usePageTitle } from './use-page-title.ts';

export interface PageHeaderProps {
  readonly title: ComponentChildren;
  /** The place above this one: a link back. */
  readonly above?: { readonly label: string; readonly href: string };
  /** One sentence that answers the first question. */
  readonly lead?: ComponentChildren;
  readonly actions?: ComponentChildren;
}

/** Top of every page: where it belongs, its name, the answer in a sentence, and what can be done. */
export function PageHeader({ title, above, lead, actions }: PageHeaderProps) {
  const heading = usePageTitle();
  return (
    <header class={styles.header}>
      {above && (
        <a class={styles.above} href={above.href}>
          <span aria-hidden="true">←</span> {above.label}
        </a>
      )}
      <h1 ref={heading}>{title}</h1>
      {lead && <p class={styles.lead}>{lead}</p>}
      {actions && <div class={styles.actions}>{actions}</div>}
    </header>
  );
}
