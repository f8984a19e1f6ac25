import { useRegistry, useStore } from '../../app/store-context.ts';
import { ColonyLabel } from '../../parts/ColonyLabel.tsx';
import { HeadLine } from '../../parts/HeadLine.tsx';
import { OutcomeFields, type OutcomeFieldsProps } from './OutcomeFields.tsx';
import styles from './WinterWalk.module.css';

/** One hive of the walk: which it is, who headed it, and its outcome. */
export function OutcomeLine(props: OutcomeFieldsProps) {
  const registry = useRegistry();
  const on = useStore().on.value;
  return (
    <li class={styles.line}>
      <p class={styles.names}>
        <ColonyLabel colony={props.colony} /> <HeadLine colony={props.colony} registry={registry} on={on} />
      </p>
      <OutcomeFields {...props} />
    </li>
  );
}
