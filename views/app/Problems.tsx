import { Notice } from '../parts/Notice.tsx';
import styles from './Problems.module.css';
import { useStore } from './store-context.ts';

/** Troubles of the machine, shown on every screen until the keeper puts them aside. */
export function Problems() {
  const { problems } = useStore();
  if (problems.value.length === 0) return null;
  return (
    <section class={styles.problems} aria-label="Troubles">
      {problems.value.map((problem) => (
        <Notice
          key={problem.code + problem.because}
          tone="warn"
          title={problem.because}
          action={{
            label: 'Put aside',
            onPress: () => {
              problems.value = problems.value.filter((each) => each !== problem);
            },
          }}
        >
          {problem.remedy}
        </Notice>
      ))}
    </section>
  );
}
