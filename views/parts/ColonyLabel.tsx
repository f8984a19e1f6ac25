import type { ColonyId } from '../../src/journal/ids.ts';
import { labelOn } from '../../src/registry/queries.ts';
import type { Colony } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useStore } from '../app/store-context.ts';
import styles from './ColonyLabel.module.css';
import { usePlainNames } from './plain-names.ts';

export interface ColonyLabelProps {
  readonly colony: Colony | ColonyId;
  readonly plain?: boolean;
  readonly size?: 'normal' | 'large';
}

/** The label on a box, drawn as a label, so that it is never taken for the name of a queen. */
export function ColonyLabel({ colony, plain = false, size = 'normal' }: ColonyLabelProps) {
  const { registry, on } = useStore();
  const unlinked = usePlainNames() || plain;
  const box = typeof colony === 'string' ? registry.value.colonies.get(colony) : colony;
  const names = size === 'large' ? `${styles.label} ${styles.large}` : styles.label;
  if (!box) return <span class={names}>a box not in these records</span>;
  const label = labelOn(box, on.value);
  if (unlinked) return <span class={names}>{label}</span>;
  return (
    <a class={names} href={routes.colony(box.id)}>
      {label}
    </a>
  );
}
