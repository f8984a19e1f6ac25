import type { Compute } from '../../src/workers/messages.ts';
import { runTask } from '../../src/workers/run-task.ts';

/** The numerics here and now, without a worker. */
export function computeInline(): Compute {
  return {
    run: async (kind, work, { signal, onProgress } = {}) => {
      signal?.throwIfAborted();
      const answer = runTask(kind, work, {
        shouldStop: () => signal?.aborted ?? false,
        ...(onProgress ? { onProgress } : {}),
      });
      signal?.throwIfAborted();
      if (answer === undefined) throw new Error('The work ended without an answer.');
      return answer;
    },
    close: () => undefined,
  };
}
