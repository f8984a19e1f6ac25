import type { ComponentChildren } from 'preact';
import { Button } from './Button.tsx';
import styles from './Notice.module.css';

export interface NoticeProps {
  readonly title?: string;
  /** `warn` for what is wrong or can hurt, `plain` for what is good to know. */
  readonly tone?: 'plain' | 'warn';
  readonly action?: { readonly label: string; readonly onPress: () => void };
  readonly children?: ComponentChildren;
}

/** Something the keeper should know, in the flow of the page. Says what, where, and the way out. */
export function Notice({ title, tone = 'plain', action, children }: NoticeProps) {
  return (
    <div class={`${styles.notice} ${styles[tone]}`} role={tone === 'warn' ? 'alert' : undefined}>
      {title && <p class={styles.title}>{title}</p>}
      <div class={styles.body}>{children}</div>
      {action && <Button onPress={action.onPress}>{action.label}</Button>}
    </div>
  );
}
