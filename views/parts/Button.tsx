import type { ComponentChildren } from 'preact';
import styles from './Button.module.css';

export interface ButtonProps {
  readonly children: ComponentChildren;
  readonly onPress?: (() => void) | undefined;
  /** Goes to an address instead of doing something. */
  readonly href?: string | undefined;
  /** `main` for the one thing to do here, `plain` for the others, `quiet` inside a line of text. */
  readonly look?: 'main' | 'plain' | 'quiet';
  /** `hive` makes it large enough for a gloved hand. */
  readonly size?: 'normal' | 'hive';
  readonly wide?: boolean;
  readonly disabled?: boolean | undefined;
  readonly type?: 'button' | 'submit';
  /** What a screen reader says, where the words on it do not tell enough. */
  readonly label?: string | undefined;
  readonly pressed?: boolean | undefined;
}

export function Button({ look = 'plain', size = 'normal', type = 'button', ...props }: ButtonProps) {
  const names = [styles.button, styles[look], styles[size], props.wide ? styles.wide : ''].join(' ');
  if (props.href !== undefined) {
    return (
      <a class={names} href={props.href} aria-label={props.label}>
        {props.children}
      </a>
    );
  }
  return (
    <button
      type={type}
      class={names}
      onClick={props.onPress}
      disabled={props.disabled}
      aria-label={props.label}
      aria-pressed={props.pressed}
    >
      {props.children}
    </button>
  );
}
