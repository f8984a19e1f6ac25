import type { ComponentChildren } from 'preact';
import { Button } from './Button.tsx';
import styles from './EmptyState.module.css';

export interface EmptyStateProps {
  /** What will stand here. */
  readonly children: ComponentChildren;
  /** The one thing to do first. */
  readonly action?: { readonly label: string; readonly href?: string; readonly onPress?: () => void };
}

/** An empty place: what will stand there, and the one thing to do first. */
export function EmptyState({ children, action }: EmptyStateProps) {
  return (
    <div class={styles.empty}>
      <p>{children}</p>
      {action && (
        <Button
          look="main"
          {...(action.href === undefined ? { onPress: action.onPress } : { href: action.href })}
        >
          {action.label}
        </Button>
      )}
    </div>
  );
}
