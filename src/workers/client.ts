import type { Compute, Response, RunOptions, TaskKind, Tasks } from './messages.ts';

interface Waiting {
  readonly kind: TaskKind;
  readonly id: number;
  readonly work: unknown;
  readonly options: RunOptions;
  readonly resolve: (answer: unknown) => void;
  readonly reject: (reason: unknown) => void;
  readonly stopListening: () => void;
}

/**
 * The numerics in a worker: one task at a time, the others in a queue. A task that is aborted while it runs ends with
 * its worker, and the next one starts in a new worker; so no task has to ask whether it should stop.
 */
export function computeInWorker(newWorker: () => Worker = startWorker): Compute {
  let worker: Worker | undefined;
  let running: Waiting | undefined;
  let nextId = 1;
  const queue: Waiting[] = [];

  const finish = (task: Waiting) => {
    task.stopListening();
    if (running === task) running = undefined;
    startNext();
  };
  const stopWorker = () => {
    worker?.terminate();
    worker = undefined;
  };
  const hear = ({ data }: MessageEvent<Response>) => {
    const task = running;
    if (!task || data.id !== task.id) return;
    if (data.kind === 'progress') return task.options.onProgress?.(data.fraction);
    if (data.kind === 'answer') task.resolve(data.answer);
    else task.reject(new Error(data.message));
    finish(task);
  };
  const breakDown = (event: Event) => {
    const task = running;
    stopWorker();
    if (!task) return;
    const message =
      'message' in event && typeof event.message === 'string' ? event.message : 'no reason given';
    task.reject(new Error(`The calculation stopped unexpectedly: ${message}`));
    finish(task);
  };
  const startNext = () => {
    if (running) return;
    running = queue.shift();
    if (!running) return;
    if (!worker) {
      worker = newWorker();
      worker.onmessage = hear;
      worker.onerror = breakDown;
      worker.onmessageerror = breakDown;
    }
    worker.postMessage({ kind: running.kind, id: running.id, work: running.work });
  };
  const abort = (task: Waiting, reason: unknown) => {
    const place = queue.indexOf(task);
    if (place >= 0) queue.splice(place, 1);
    if (running === task) stopWorker();
    task.reject(reason);
    finish(task);
  };

  return {
    run<K extends TaskKind>(kind: K, work: Tasks[K]['work'], options: RunOptions = {}) {
      return new Promise<Tasks[K]['answer']>((resolve, reject) => {
        const { signal } = options;
        if (signal?.aborted) return reject(signal.reason);
        const onAbort = () => abort(task, signal?.reason);
        const task: Waiting = {
          kind,
          id: nextId++,
          work,
          options,
          // The worker answers each kind of task with the answer of that kind.
          resolve: (answer) => resolve(answer as Tasks[K]['answer']),
          reject,
          stopListening: () => signal?.removeEventListener('abort', onAbort),
        };
        signal?.addEventListener('abort', onAbort);
        queue.push(task);
        startNext();
      });
    },
    close() {
      stopWorker();
      const left = [...(running ? [running] : []), ...queue.splice(0)];
      running = undefined;
      for (const task of left) task.reject(new Error('The calculations were closed.'));
    },
  };
}

function startWorker(): Worker {
  return new Worker(new URL('./compute.worker.ts', import.meta.url), { type: 'module' });
}
