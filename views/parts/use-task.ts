import { useEffect, useRef, useState } from 'preact/hooks';
import type { TaskKind, Tasks } from '../../src/store/index.ts';
import { useStore } from '../app/store-context.ts';

export interface TaskState<K extends TaskKind> {
  /** The last answer; while new work is under way it belongs to the work before. */
  readonly answer?: Tasks[K]['answer'];
  /** The work that the answer belongs to. */
  readonly of?: Tasks[K]['work'];
  readonly busy: boolean;
  readonly problem?: string;
}

/**
 * Keeps the answer in step with the work. Work that changes while an answer is on its way waits for it, and only the
 * latest is then done: a slider may ask a hundred times, the worker is asked when it has a hand free.
 */
export function useTask<K extends TaskKind>(kind: K, work: Tasks[K]['work'] | undefined): TaskState<K> {
  const { compute } = useStore();
  const [state, setState] = useState<TaskState<K>>({ busy: false });
  const mounted = useRef(true);
  const running = useRef(false);
  const next = useRef<Tasks[K]['work']>(undefined);
  useEffect(() => {
    mounted.current = true;
    return () => {
      mounted.current = false;
    };
  }, []);
  useEffect(() => {
    next.current = work;
    if (work === undefined || running.current) return;
    const follow = async () => {
      running.current = true;
      while (next.current !== undefined && mounted.current) {
        const asked = next.current;
        next.current = undefined;
        setState((before) => ({ ...before, busy: true }));
        try {
          const answer = await compute.run(kind, asked);
          if (mounted.current) setState({ answer, of: asked, busy: next.current !== undefined });
        } catch (error) {
          const problem = error instanceof Error ? error.message : String(error);
          if (mounted.current) setState({ busy: false, problem });
        }
      }
      running.current = false;
    };
    void follow();
  }, [kind, work, compute]);
  return state;
}

export interface AskedTask<K extends TaskKind> extends TaskState<K> {
  readonly fraction: number;
  readonly ask: (work: Tasks[K]['work']) => void;
  readonly cancel: () => void;
}

/** Work that takes its time: begun when asked for, with its progress, ended when the keeper says so or leaves. */
export function useAskedTask<K extends TaskKind>(kind: K): AskedTask<K> {
  const { compute } = useStore();
  const [state, setState] = useState<TaskState<K> & { readonly fraction: number }>({
    busy: false,
    fraction: 0,
  });
  const abort = useRef<AbortController>(undefined);
  useEffect(() => () => abort.current?.abort(new Error('The screen was left.')), []);
  const ask = (work: Tasks[K]['work']) => {
    abort.current?.abort(new Error('Asked anew.'));
    const own = new AbortController();
    abort.current = own;
    setState((before) => ({ ...kept(before), busy: true, fraction: 0 }));
    compute
      .run(kind, work, {
        signal: own.signal,
        onProgress: (fraction) => !own.signal.aborted && setState((before) => ({ ...before, fraction })),
      })
      .then(
        (answer) => !own.signal.aborted && setState({ answer, of: work, busy: false, fraction: 1 }),
        (error: unknown) => {
          if (own.signal.aborted) return;
          setState({
            busy: false,
            fraction: 0,
            problem: error instanceof Error ? error.message : String(error),
          });
        },
      );
  };
  const cancel = () => {
    abort.current?.abort(new Error('Ended by the keeper.'));
    setState((before) => ({ ...kept(before), busy: false, fraction: 0 }));
  };
  return { ...state, ask, cancel };
}

/** The answer that stays in sight while another is on its way. */
function kept<K extends TaskKind>({ answer, of }: TaskState<K>): Pick<TaskState<K>, 'answer' | 'of'> {
  return { ...(answer === undefined ? {} : { answer }), ...(of === undefined ? {} : { of }) };
}
