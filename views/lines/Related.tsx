import { queenKey } from '../../graph/lineage/registry-graph.ts';
import { relation } from '../../graph/lineage/relation.ts';
import type { QueenId } from '../../src/journal/ids.ts';
import { useRegistry } from '../app/store-context.ts';
import { QueenName } from '../parts/QueenName.tsx';
import styles from './Chosen.module.css';
import { queenIdOf } from './family.ts';
import { graphOf } from './graph-of.ts';
import { kinshipOf } from './pedigree-of.ts';
import { kinshipSentence, relationCertainty, relationSentence } from './relation-words.ts';

export interface RelatedProps {
  readonly first: QueenId;
  readonly second: QueenId;
  readonly titleOf: (queen: QueenId) => string;
  readonly onClose: () => void;
}

/** How two queens are related: in words, how sure, and as a number with what it means. */
export function Related({ first, second, titleOf, onClose }: RelatedProps) {
  const registry = useRegistry();
  const graph = graphOf(registry);
  const between = relation(graph, queenKey(first), queenKey(second));
  const kinship = kinshipOf(registry, first, second);
  const names = {
    first: titleOf(first),
    second: titleOf(second),
    commonDam: between.commonDam && titleOf(queenIdOf(graph, between.commonDam)),
  };
  const certainty = relationCertainty(between);
  return (
    <div class={styles.related}>
      <div class={styles.head}>
        <p class={styles.name}>
          <QueenName queen={first} hideMark /> and <QueenName queen={second} hideMark />
        </p>
        <button type="button" class={styles.close} onClick={onClose} aria-label="Stop comparing">
          ×
        </button>
      </div>
      <p>
        {relationSentence(between, names)} {certainty}
      </p>
      {kinship !== undefined && first !== second && (
        <p>
          <strong>Kinship {kinship.toFixed(3)}.</strong> {kinshipSentence(kinship)}
        </p>
      )}
    </div>
  );
}
