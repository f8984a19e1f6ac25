import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { Button } from './Button.tsx';
import styles from './Form.module.css';
import { FormActions } from './FormActions.tsx';
import { SavingNotices } from './SavingNotices.tsx';
import type { Saving } from './use-saving.ts';

export interface FormProps {
  readonly saving: Saving;
  readonly onSubmit: () => unknown;
  readonly submit: string;
  readonly children: ComponentChildren;
  /** More buttons beside the main one. */
  readonly beside?: ComponentChildren;
  /** Words for the path of a field that a problem names. */
  readonly nameField?: (path: string) => string;
}

/** Fields under one another, what stands against saving, and the button that saves. */
export function Form({ saving, onSubmit, submit, children, beside, nameField }: FormProps) {
  const form = useRef<HTMLFormElement>(null);
  const onForm = (event: Event) => {
    event.preventDefault();
    onSubmit();
    requestAnimationFrame(() => showFirstProblem(form.current));
  };
  return (
    <form ref={form} class={styles.form} onSubmit={onForm} noValidate>
      {children}
      <SavingNotices saving={saving} nameField={nameField} />
      <FormActions>
        <Button type="submit" look="main" size="hive" disabled={saving.busy}>
          {submit}
        </Button>
        {beside}
      </FormActions>
    </form>
  );
}

/** What is wrong may stand above the part of a long form that is in sight. */
function showFirstProblem(form: HTMLElement | null): void {
  form?.querySelector('[role="alert"]')?.scrollIntoView({ block: 'center' });
}
