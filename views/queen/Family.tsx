import { useMemo } from 'preact/hooks';
import type { Queen } from '../../src/registry/state.ts';
import { routes } from '../app/routes.ts';
import { useRegistry, useStore } from '../app/store-context.ts';
import { lineFacts } from '../lines/facts.ts';
import { lookOf } from '../lines/look.ts';
import { StillDrawing } from '../lines/StillDrawing.tsx';
import { QueenName } from '../parts/QueenName.tsx';
import styles from './Family.module.css';
import { damLineDoubt, damLineWords, familyLives } from './family-lives.ts';
import queenStyles from './Queen.module.css';

/** Her dam line to the founder with each dam's winters, her sisters and her daughters, drawn as on Lines. */
export function Family({ queen }: { readonly queen: Queen }) {
  const registry = useRegistry();
  const on = useStore().on.value;
  const { byId, lines } = lineFacts(registry, on);
  const family = useMemo(() => familyLives(byId, queen.id), [byId, queen.id]);
  const look = lookOf({ lives: byId, summaries: lines, chosen: [queen.id] });
  const doubt = damLineDoubt(family);
  return (
    <section class={queenStyles.section} aria-labelledby="family">
      <div class={styles.head}>
        <h2 id="family">Her line</h2>
        <a href={routes.lines({ focus: queen.id, show: 'both' })}>Among all lines</a>
      </div>
      <StillDrawing lives={family.lives} on={on} look={look} words={damLineWords(family.damLine)} />
      {family.damLine.length > 1 ? (
        <p class={styles.path}>
          {family.damLine.toReversed().map((life, step) => (
            <span key={life.id}>
              {step > 0 && ' out of '}
              <QueenName queen={life.id} hideMark />
            </span>
          ))}
        </p>
      ) : (
        <p>She founds her line.</p>
      )}
      {doubt && <p>{doubt}</p>}
    </section>
  );
}
