import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import styles from './Sheet.module.css';

export interface SheetProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A sheet over the page: from below on a phone, in the middle at a desk. Escape and the shade close it. */
export function Sheet({ title, onClose, children }: SheetProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const sheet = dialog.current;
    sheet?.showModal();
    return () => sheet?.close();
  }, []);
  const onShade = (event: MouseEvent) => event.target === dialog.current && onClose();
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keyboard closes a dialog with Escape, which onCancel hears.
    <dialog ref={dialog} class={styles.sheet} aria-labelledby={id} onCancel={onClose} onClick={onShade}>
      <div class={styles.inside}>
        <div class={styles.head}>
          <h2 id={id}>{title}</h2>
          <button type="button" class={styles.close} onClick={onClose}>
            Close
          </button>
        </div>
        {children}
      </div>
    </dialog>
  );
}
