import { useEffect } from 'preact/hooks';
import type { Evaluated, EvaluationState } from '../../src/store/evaluation.ts';
import { useStore } from './store-context.ts';

/** Breeding values and kinship, kept in step with the records while the screen that asks is open. */
export function useEvaluation(): EvaluationState {
  const store = useStore();
  useEffect(() => store.watchEvaluation(), [store]);
  return store.evaluation.value;
}

/** The evaluation to show: the one that is ready, else the last one until the new one is there. */
export function lastEvaluated(state: EvaluationState): Evaluated | undefined {
  if (state.is === 'ready') return state.evaluated;
  return state.is === 'running' || state.is === 'failed' ? state.before : undefined;
}
