import type { ComponentChildren } from 'preact';
import styles from './Unfold.module.css';

export interface UnfoldProps {
  readonly title: ComponentChildren;
  readonly class?: string | undefined;
  readonly children: ComponentChildren;
}

/** Words that read as a link and unfold what stands behind them. */
export function Unfold({ title, class: look = '', children }: UnfoldProps) {
  return (
    <details class={`${styles.unfold} ${look}`}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}
