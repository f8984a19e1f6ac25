import type { Request, Response } from './messages.ts';
import { runTask } from './run-task.ts';

const post = (response: Response) => self.postMessage(response);

self.onmessage = ({ data: { kind, id, work } }: MessageEvent<Request>) => {
  let told = 0;
  const onProgress = (fraction: number) => {
    if (fraction - told < 0.01 && fraction < 1) return;
    told = fraction;
    post({ kind: 'progress', id, fraction });
  };
  try {
    const answer = runTask(kind, work, { onProgress });
    if (answer === undefined) throw new Error('The work ended without an answer.');
    post({ kind: 'answer', id, answer });
  } catch (error) {
    post({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) });
  }
};
