import { describe, expect, it } from 'vitest';
import { computeInWorker } from '../../../src/workers/client.ts';
import type { Request, Response, Tasks } from '../../../src/workers/messages.ts';
import { computeInline } from '../../helpers/compute-inline.ts';

/** A worker that does nothing by itself: the test says when it answers. */
class PuppetWorker {
  static made: PuppetWorker[] = [];
  readonly asked: Request[] = [];
  terminated = false;
  onmessage: ((event: { data: Response }) => void) | null = null;
  onerror: ((event: Event) => void) | null = null;

  constructor() {
    PuppetWorker.made.push(this);
  }

  postMessage(request: Request): void {
    this.asked.push(request);
  }

  terminate(): void {
    this.terminated = true;
  }

  say(response: Response): void {
    this.onmessage?.({ data: response });
  }
}

function puppets() {
  PuppetWorker.made = [];
  const compute = computeInWorker(() => new PuppetWorker() as unknown as Worker);
  return { compute, workers: PuppetWorker.made };
}

const problem = (size: number) => ({ size }) as unknown as Tasks['trade-off']['work'];
const answer = { ok: true, points: [] } as unknown as Tasks['trade-off']['answer'];

describe('the numerics in a worker', () => {
  it('start with the first task, run one at a time and answer each its own', async () => {
    const { compute, workers } = puppets();
    expect(workers).toHaveLength(0);
    const first = compute.run('trade-off', problem(1));
    const second = compute.run('trade-off', problem(2));
    expect(workers).toHaveLength(1);
    const worker = workers[0]!;
    expect(worker.asked.map(({ work }) => work)).toEqual([problem(1)]);
    worker.say({ kind: 'answer', id: worker.asked[0]!.id, answer });
    expect(await first).toBe(answer);
    expect(worker.asked.map(({ work }) => work)).toEqual([problem(1), problem(2)]);
    worker.say({ kind: 'failed', id: worker.asked[1]!.id, message: 'no candidates' });
    await expect(second).rejects.toThrow('no candidates');
  });

  it('tell how far they are, and ignore words about a task that is over', async () => {
    const { compute, workers } = puppets();
    const heard: number[] = [];
    const first = compute.run('trade-off', problem(1), { onProgress: (fraction) => heard.push(fraction) });
    const worker = workers[0]!;
    const { id } = worker.asked[0]!;
    worker.say({ kind: 'progress', id, fraction: 0.5 });
    worker.say({ kind: 'progress', id: id + 7, fraction: 0.9 });
    worker.say({ kind: 'answer', id, answer });
    worker.say({ kind: 'progress', id, fraction: 1 });
    await first;
    expect(heard).toEqual([0.5]);
  });

  it('aborted while running end with their worker; the next task starts in a new one', async () => {
    const { compute, workers } = puppets();
    const abort = new AbortController();
    const first = compute.run('trade-off', problem(1), { signal: abort.signal });
    const second = compute.run('trade-off', problem(2));
    abort.abort(new Error('The records changed.'));
    await expect(first).rejects.toThrow('The records changed.');
    expect(workers.map(({ terminated }) => terminated)).toEqual([true, false]);
    const fresh = workers[1]!;
    expect(fresh.asked.map(({ work }) => work)).toEqual([problem(2)]);
    fresh.say({ kind: 'answer', id: fresh.asked[0]!.id, answer });
    expect(await second).toBe(answer);
  });

  it('aborted while waiting leave the running task alone; aborted before never start', async () => {
    const { compute, workers } = puppets();
    const abort = new AbortController();
    const first = compute.run('trade-off', problem(1));
    const second = compute.run('trade-off', problem(2), { signal: abort.signal });
    abort.abort(new Error('left the screen'));
    await expect(second).rejects.toThrow('left the screen');
    await expect(compute.run('trade-off', problem(3), { signal: abort.signal })).rejects.toThrow(
      'left the screen',
    );
    const worker = workers[0]!;
    expect(worker.terminated).toBe(false);
    worker.say({ kind: 'answer', id: worker.asked[0]!.id, answer });
    expect(await first).toBe(answer);
    expect(worker.asked).toHaveLength(1);
  });

  it('that break down fail the task in hand and go on with the next in a new worker', async () => {
    const { compute, workers } = puppets();
    const first = compute.run('trade-off', problem(1));
    const second = compute.run('trade-off', problem(2));
    workers[0]!.onerror?.(Object.assign(new Event('error'), { message: 'out of memory' }));
    await expect(first).rejects.toThrow('out of memory');
    const fresh = workers[1]!;
    fresh.say({ kind: 'answer', id: fresh.asked[0]!.id, answer });
    expect(await second).toBe(answer);
  });

  it('closed fail what is left', async () => {
    const { compute, workers } = puppets();
    const both = [compute.run('trade-off', problem(1)), compute.run('trade-off', problem(2))];
    compute.close();
    for (const each of both) await expect(each).rejects.toThrow('closed');
    expect(workers[0]!.terminated).toBe(true);
  });
});

describe('the numerics here and now', () => {
  const work: Tasks['trade-off']['work'] = {
    merit: Float64Array.of(2, 1),
    kinship: Float64Array.of(0.5, 0.1, 0.1, 0.5),
  } as Tasks['trade-off']['work'];

  it('answer the same question as the worker would', async () => {
    const curve = await computeInline().run('trade-off', work);
    if (!curve.ok) throw new Error(curve.found);
    // Most gain is all from the better queen; least kinship of two alike queens is half from each.
    expect([...curve.points[0]!.shares]).toEqual([1, 0]);
    expect(curve.points.at(-1)!.shares[0]).toBeCloseTo(0.5, 6);
  });

  it('obey a signal that is aborted already', async () => {
    await expect(
      computeInline().run('trade-off', work, { signal: AbortSignal.abort(new Error('left')) }),
    ).rejects.toThrow('left');
  });
});
