import type { Problem } from '../../src/journal/problems.ts';
import type { Store } from '../../src/store/contract.ts';
import { Notice } from '../parts/Notice.tsx';
import styles from './Problems.module.css';
import { areShut } from './ShutRecords.tsx';
import { useStore } from './store-context.ts';

/** Troubles of the machine, shown on every screen until the keeper puts them aside; while the records are shut, they stay. */
export function Problems() {
  const store = useStore();
  const { problems } = store;
  if (problems.value.length === 0) return null;
  return (
    <section class={styles.problems} aria-label="Troubles">
      {problems.value.map((problem) => (
        <Notice
          key={problem.code + problem.because}
          tone="warn"
          title={problem.because}
          {...(areShut(store) ? {} : { action: putAside(store, problem) })}
        >
          {problem.remedy}
        </Notice>
      ))}
    </section>
  );
}

function putAside({ problems }: Store, problem: Problem) {
  return {
    label: 'Put aside',
    onPress: () => {
      problems.value = problems.value.filter((each) => each !== problem);
    },
  };
}
