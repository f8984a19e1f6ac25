import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { PlainDay } from '../journal/day.ts';
import type { Problem } from '../journal/problems.ts';
import { type Assumptions, type EvaluationWork, evaluationWork } from '../registry/evaluation.ts';
import { project } from '../registry/project.ts';
import type { Registry } from '../registry/state.ts';
import type { EvaluationAnswer } from '../workers/evaluate.ts';
import type { Compute } from '../workers/messages.ts';
import type { Core } from './core.ts';
import type { Settings } from './settings.ts';

/** An evaluation with what it was worked out from. */
export interface Evaluated {
  readonly registry: Registry;
  readonly on: PlainDay;
  /** What the keeper assumed, as text: equal for equal assumptions. */
  readonly assumed: string;
  readonly work: EvaluationWork;
  readonly answer: EvaluationAnswer;
}

export type EvaluationState =
  | { readonly is: 'not-asked' }
  /** `before` is the last one, for the screens to show until the new one is there. */
  | { readonly is: 'running'; readonly fraction: number; readonly before?: Evaluated }
  | { readonly is: 'ready'; readonly evaluated: Evaluated }
  | { readonly is: 'failed'; readonly problem: Problem; readonly before?: Evaluated };

export interface Evaluator {
  readonly state: ReadonlySignal<EvaluationState>;
  /** Keeps the evaluation in step with the records until the function it returns is called. */
  watch(): () => void;
}

/**
 * Keeps breeding values in step with the records while a screen watches. A change in between ends the work in hand and
 * starts anew, so that an answer always belongs to the records it was asked for.
 */
export function createEvaluator(core: Core, compute: () => Compute): Evaluator {
  const state = signal<EvaluationState>({ is: 'not-asked' });
  let watchers = 0;
  let stop: (() => void) | undefined;
  const assumed = computed(() => JSON.stringify(assumptionsOf(core.settings.value)));
  const start = () =>
    effect(() => {
      const on = core.on.value;
      const whole = core.registry.value;
      const known = lastOf(state.peek());
      const { value: key } = assumed;
      if (known && known.registry.revision === whole.revision && known.on === on && known.assumed === key) {
        // Work that was under way for another day or assumption has just been ended.
        if (state.peek().is !== 'ready') state.value = { is: 'ready', evaluated: known };
        return undefined;
      }
      const abort = new AbortController();
      void run(registryAt(core, whole, on), on, key, abort.signal);
      return () => abort.abort(new Error('The records changed.'));
    });
  const run = async (registry: Registry, on: PlainDay, key: string, ended: AbortSignal) => {
    const before = lastOf(state.peek());
    const kept = before ? { before } : {};
    state.value = { is: 'running', fraction: 0, ...kept };
    try {
      const work = evaluationWork(registry, on, JSON.parse(key) as Assumptions);
      const answer = await compute().run('evaluate', work, {
        signal: ended,
        onProgress: (fraction) => {
          if (!ended.aborted) state.value = { is: 'running', fraction, ...kept };
        },
      });
      if (ended.aborted) return;
      state.value = { is: 'ready', evaluated: { registry, on, assumed: key, work, answer } };
    } catch (error) {
      if (!ended.aborted) state.value = { is: 'failed', problem: failed(error), ...kept };
    }
  };
  return {
    state,
    watch() {
      watchers += 1;
      stop ??= start();
      return () => {
        watchers -= 1;
        if (watchers > 0) return;
        stop?.();
        stop = undefined;
      };
    },
  };
}

function assumptionsOf({ sexAlleles, effectiveMates, ownVariances }: Settings): Assumptions {
  return {
    sexAlleles,
    variances: ownVariances,
    ...(effectiveMates === undefined ? {} : { effectiveMates }),
  };
}

/** The registry as it stood at the end of a day; the registry itself where nothing was recorded after it. */
function registryAt(core: Core, whole: Registry, on: PlainDay): Registry {
  const last = whole.entries.at(-1);
  if (!last || last.day <= (on as string)) return whole;
  return { ...project(core.journal.peek(), { until: on }), revision: whole.revision };
}

function lastOf(state: EvaluationState): Evaluated | undefined {
  if (state.is === 'ready') return state.evaluated;
  return state.is === 'running' || state.is === 'failed' ? state.before : undefined;
}

function failed(error: unknown): Problem {
  return {
    code: 'worker-failed',
    where: 'Breeding values',
    found: error instanceof Error ? error.message : String(error),
    because: 'They could not be worked out.',
    remedy:
      'Your records are safe. Reload the page; if it happens again, save a file of your journal and report it.',
  };
}
