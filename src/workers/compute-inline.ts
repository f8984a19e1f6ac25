import type { Compute } from './messages.ts';
import { runTask } from './run-task.ts';

/** The numerics here and now, for tests and the command line. */
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
