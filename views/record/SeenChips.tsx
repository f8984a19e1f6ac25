import styles from './SeenChips.module.css';

export interface SeenChip<K extends string> {
  readonly key: K;
  readonly there: string;
  readonly missing: string;
}

export interface SeenChipsProps<K extends string> {
  readonly label: string;
  readonly chips: readonly SeenChip<K>[];
  readonly value: Readonly<Partial<Record<K, boolean | undefined>>>;
  readonly onChange: (key: K, seen: boolean | undefined) => void;
}

/** Things looked for: a tap says seen, a second looked for and not there, a third not looked at. */
export function SeenChips<K extends string>({ label, chips, value, onChange }: SeenChipsProps<K>) {
  return (
    <fieldset>
      <legend class={styles.label}>{label}</legend>
      <div class={styles.chips}>
        {chips.map(({ key, there, missing }) => {
          const seen = value[key];
          const state = seen === undefined ? 'not looked at' : seen ? 'seen' : 'looked for and not there';
          return (
            <button
              key={key}
              type="button"
              class={seen === undefined ? '' : seen ? styles.there : styles.missing}
              aria-label={`${there}: ${state}`}
              onClick={() => onChange(key, seen === undefined ? true : seen ? false : undefined)}
            >
              {seen === false ? missing : there}
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
